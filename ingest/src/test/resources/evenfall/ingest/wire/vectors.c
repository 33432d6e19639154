/* Reads "crc HEX", "stuff HEX", "sample ..." and "hello ..." line by line and answers with hex. */
#include "frame.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static size_t from_hex(const char *text, uint8_t *into)
{
    size_t count = 0;
    unsigned byte;
    for (; sscanf(text, "%2x", &byte) == 1; text += 2) {
        into[count++] = (uint8_t)byte;
    }
    return count;
}

static void answer(const uint8_t *bytes, size_t count)
{
    for (size_t i = 0; i < count; i++) {
        printf("%s%02X", i == 0 ? "" : " ", bytes[i]);
    }
    printf("\n");
}

int main(void)
{
    char line[2048];
    while (fgets(line, sizeof line, stdin)) {
        uint8_t in[1024];
        uint8_t out[1100];
        line[strcspn(line, "\n")] = 0;
        if (strncmp(line, "crc ", 4) == 0) {
            uint16_t crc = frame_crc(in, from_hex(line + 4, in));
            out[0] = (uint8_t)(crc >> 8);
            out[1] = (uint8_t)crc;
            answer(out, 2);
        } else if (strncmp(line, "stuff ", 6) == 0) {
            size_t count = from_hex(line + 6, in);
            answer(out, frame_stuff(in, count, out));
        } else if (strncmp(line, "sample ", 7) == 0) {
            unsigned sensor, sequence;
            unsigned long clock;
            int c[6];
            if (sscanf(line + 7, "%x %u %lu %d %d %d %d %d %d", &sensor, &sequence, &clock, &c[0], &c[1], &c[2], &c[3],
                       &c[4], &c[5]) != 9) {
                return 1;
            }
            int16_t counts[6];
            for (int i = 0; i < 6; i++) {
                counts[i] = (int16_t)c[i];
            }
            answer(out, frame_sample(out, (uint16_t)sensor, (uint16_t)sequence, (uint32_t)clock, counts));
        } else {
            struct frame_hello hello;
            unsigned sensor;
            unsigned long long clock;
            char place[16];
            int name = 0;
            if (sscanf(line, "hello %x %llu %15s %f %f %f %f %f%n", &sensor, &clock, place, &hello.g_per_count,
                       &hello.degrees_per_count, &hello.range_g, &hello.range_degrees, &hello.rate_hz, &name) != 8) {
                return 1;
            }
            hello.sensor = (uint16_t)sensor;
            hello.place = place[0] == 'p' ? FRAME_PELVIS : place[0] == 'u' ? FRAME_UPPER_BACK : FRAME_UNKNOWN;
            hello.name = line[name] == ' ' ? line + name + 1 : "";
            answer(out, frame_hello(out, &hello, clock));
        }
    }
    return 0;
}
