#include "frame.h"

#include <string.h>

#define KIND_SAMPLE 0x11 /* version 1, kind 1 */
#define KIND_HELLO 0x12  /* version 1, kind 2 */

uint16_t frame_crc(const uint8_t *bytes, size_t length)
{
    uint16_t crc = 0xFFFF;
    for (size_t i = 0; i < length; i++) {
        uint8_t x = (uint8_t)((crc >> 8) ^ bytes[i]);
        x ^= x >> 4;
        crc = (uint16_t)((crc << 8) ^ ((uint16_t)x << 12) ^ ((uint16_t)x << 5) ^ x);
    }
    return crc;
}

size_t frame_stuff(const uint8_t *bytes, size_t length, uint8_t *into)
{
    size_t code_at = 0; /* where the distance to the next 0 will stand */
    size_t at = 1;
    uint8_t code = 1;
    for (size_t i = 0; i < length; i++) {
        if (bytes[i] != 0) {
            into[at++] = bytes[i];
            code++;
        }
        if (bytes[i] == 0 || (code == 0xFF && i + 1 < length)) {
            into[code_at] = code;
            code_at = at++;
            code = 1;
        }
    }
    into[code_at] = code;
    return at;
}

/* Numbers go lowest byte first, whatever the controller does. */
static uint8_t *put(uint8_t *at, uint64_t value, int bytes)
{
    for (int i = 0; i < bytes; i++) {
        *at++ = (uint8_t)(value >> (8 * i));
    }
    return at;
}

static uint8_t *put_float(uint8_t *at, float value)
{
    uint32_t bits;
    memcpy(&bits, &value, sizeof bits);
    return put(at, bits, 4);
}

/* Appends the checksum, upper byte first, stuffs and ends the frame. */
static size_t finish(uint8_t *plain, uint8_t *end, uint8_t *into)
{
    uint16_t crc = frame_crc(plain, (size_t)(end - plain));
    *end++ = (uint8_t)(crc >> 8);
    *end++ = (uint8_t)crc;
    size_t length = frame_stuff(plain, (size_t)(end - plain), into);
    into[length] = 0;
    return length + 1;
}

size_t frame_sample(uint8_t into[FRAME_SAMPLE_BYTES], uint16_t sensor, uint16_t sequence, uint32_t clock_us,
                    const int16_t counts[6])
{
    uint8_t plain[FRAME_SAMPLE_BYTES];
    uint8_t *at = put(plain, KIND_SAMPLE, 1);
    at = put(at, sensor, 2);
    at = put(at, sequence, 2);
    at = put(at, clock_us, 4);
    for (int i = 0; i < 6; i++) {
        at = put(at, (uint16_t)counts[i], 2);
    }
    return finish(plain, at, into);
}

size_t frame_hello(uint8_t into[FRAME_HELLO_BYTES], const struct frame_hello *hello, uint64_t clock_us)
{
    uint8_t plain[FRAME_HELLO_BYTES];
    size_t name = strlen(hello->name);
    if (name > FRAME_NAME_BYTES) {
        name = FRAME_NAME_BYTES;
    }
    uint8_t *at = put(plain, KIND_HELLO, 1);
    at = put(at, hello->sensor, 2);
    at = put(at, clock_us, 8);
    at = put(at, (uint64_t)hello->place, 1);
    at = put_float(at, hello->g_per_count);
    at = put_float(at, hello->degrees_per_count);
    at = put_float(at, hello->range_g);
    at = put_float(at, hello->range_degrees);
    at = put_float(at, hello->rate_hz);
    at = put(at, name, 1);
    memcpy(at, hello->name, name);
    return finish(plain, at + name, into);
}
