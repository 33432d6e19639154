/*
 * A make-believe board for sensor.c, on a clock that goes on with every look at it: a FIFO that takes a sample every
 * 4996 us and runs over after 1024 bytes, a stall of 0.7 s at 3 s, a port that is full from 5 s to 5.25 s. The first count
 * of a sample is its true number. Ends after 9 s; what was sent is on standard output.
 */
#include "board.h"
#include "sensor.h"

#include <stdio.h>
#include <stdlib.h>

#define TRUE_PERIOD_US 4996

static uint64_t now_us = 12345;
static uint64_t next_us;
static uint16_t number;
static uint8_t fifo[1024];
static uint16_t held;
static int on;
static int overflowed;
static int stalled;

static void fill(void)
{
    while (next_us <= now_us) {
        if (on && held + 12 > 1024) {
            overflowed = 1;
        } else if (on) {
            uint16_t counts[6] = {number, 1, 2048, 3, 4, 5};
            for (int i = 0; i < 6; i++) {
                fifo[held++] = (uint8_t)(counts[i] >> 8);
                fifo[held++] = (uint8_t)counts[i];
            }
        }
        number++;
        next_us += TRUE_PERIOD_US;
    }
}

void board_start(void)
{
    next_us = now_us + 777;
}

uint64_t board_micros(void)
{
    now_us += 60;
    if (now_us > 3000000 && !stalled) {
        stalled = 1;
        now_us += 700000;
    }
    fill();
    return now_us;
}

void board_write_register(uint8_t address, uint8_t value)
{
    if (address == 0x6A) {
        on = (value & 0x40) != 0;
        held = value & 0x04 ? 0 : held;
    }
}

void board_read_registers(uint8_t address, uint8_t *into, uint8_t count)
{
    now_us += 100;
    if (address == 0x3A) {
        into[0] = overflowed ? 0x10 : 0;
        overflowed = 0;
    } else if (address == 0x72) {
        into[0] = (uint8_t)(held >> 8);
        into[1] = (uint8_t)held;
    } else if (address == 0x74) {
        for (int i = 0; i < count; i++) {
            into[i] = fifo[i];
        }
        for (int i = count; i < held; i++) {
            fifo[i - count] = fifo[i];
        }
        held = (uint16_t)(held - count);
    } else {
        exit(3);
    }
}

uint8_t board_room(void)
{
    return now_us > 5000000 && now_us < 5250000 ? 0 : 255;
}

void board_send(const uint8_t *bytes, uint8_t count)
{
    fwrite(bytes, 1, count, stdout);
}

int main(void)
{
    sensor_start();
    while (board_micros() < 9000000) {
        sensor_poll();
    }
    return 0;
}
