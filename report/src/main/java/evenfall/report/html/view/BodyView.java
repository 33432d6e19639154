package evenfall.report.html.view;

import evenfall.report.chart.BodyFigure;
import evenfall.report.chart.BodyPose;
import evenfall.report.chart.Picture;

/**
 * One line figure of the body.
 *
 * @param title from where it is looked at
 * @param moment when it is taken, and against what
 * @param words what it shows
 * @param figure the drawing
 * @param view from where, for drawing it elsewhere
 * @param pose how the body stands, for drawing it elsewhere
 */
public record BodyView(
        String title, String moment, String words, Picture figure, BodyFigure.View view, BodyPose pose) {}
