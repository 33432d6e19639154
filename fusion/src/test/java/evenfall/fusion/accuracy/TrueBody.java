package evenfall.fusion.accuracy;

import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.place.Place;

/** Where a body truly is and how it moves, by the truth's own time, s. */
interface TrueBody {

    /** World from segment. */
    Quaternion orientation(Place place, double t);

    /** Of the point of the pelvis under the sensor, m/s. */
    Vector3 speed(double t);

    /** Of the same point, m. */
    Vector3 place(double t);
}
