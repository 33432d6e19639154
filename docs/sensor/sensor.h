#ifndef SENSOR_H
#define SENSOR_H

/* Sets the six-axis sensor up. Once. */
void sensor_start(void);

/* Sends what there is to send; never waits. Call it over and over, at least every few milliseconds. */
void sensor_poll(void);

#endif
