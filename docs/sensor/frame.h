/*
 * Frames of the wire (see ../wire.md): what a sensor sends, without any hardware.
 *
 * C99, no memory is allocated, nothing is kept between calls. Works on 8-bit and 32-bit controllers of either byte order.
 */
#ifndef FRAME_H
#define FRAME_H

#include <stddef.h>
#include <stdint.h>

/* Bytes of the longest frames these functions write, the ending 0 included. */
#define FRAME_SAMPLE_BYTES 25
#define FRAME_NAME_BYTES 64
#define FRAME_HELLO_BYTES (33 + FRAME_NAME_BYTES + 2 + 1 + 1)

enum frame_place { FRAME_UNKNOWN = 0, FRAME_PELVIS = 1, FRAME_UPPER_BACK = 2 };

/* What a sensor says of itself, once a second. */
struct frame_hello {
    uint16_t sensor;          /* its number; 0x0050 and 0x0042 always mean pelvis and upper back */
    enum frame_place place;   /* where it is strapped, if it knows */
    float g_per_count;
    float degrees_per_count;  /* deg/s */
    float range_g;            /* where the accelerometer clips */
    float range_degrees;      /* where the gyroscope clips, deg/s */
    float rate_hz;
    const char *name;         /* UTF-8, at most FRAME_NAME_BYTES bytes, more is cut off */
};

/* CRC-16/CCITT-FALSE: polynomial 1021, start FFFF, no reflection. */
uint16_t frame_crc(const uint8_t *bytes, size_t length);

/* Writes `length` bytes so that none is 0 (COBS), without an ending 0; says how many that were. `into` must hold
   length + length / 254 + 1 bytes and must not overlap `bytes`. */
size_t frame_stuff(const uint8_t *bytes, size_t length, uint8_t *into);

/* A sample: counts of force along x, y, z and turn rate about x, y, z. Returns how many bytes to send. */
size_t frame_sample(uint8_t into[FRAME_SAMPLE_BYTES], uint16_t sensor, uint16_t sequence, uint32_t clock_us,
                    const int16_t counts[6]);

/* A hello at `clock_us` of the sensor's clock. Returns how many bytes to send. */
size_t frame_hello(uint8_t into[FRAME_HELLO_BYTES], const struct frame_hello *hello, uint64_t clock_us);

#endif
