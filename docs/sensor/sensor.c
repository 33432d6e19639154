/*
 * An example of a sensor for Evenfall's wire: reads a six-axis sensor over I2C through its FIFO and sends a frame a sample
 * over a serial port, and once a second a frame that says what it is.
 *
 * Registers and bits are those of the widespread MPU-60x0 family of six-axis sensors, as its published register map
 * lists them: 16-bit values, upper byte first, a FIFO of 1024 bytes that takes force before turn rate. Another family
 * needs other numbers in the block below and nothing else.
 */
#include "sensor.h"

#include "board.h"
#include "frame.h"

/* What to change for your own sensor: a number of its own, and its place if it always is at the same one. */
#define NUMBER 0x1A2B
#define PLACE FRAME_UNKNOWN
#define NAME "example 1"

#define RATE_HZ 200
#define PERIOD_US (1000000L / RATE_HZ)
#define HELLO_US 1000000L

#define SAMPLE_RATE_DIVIDER 0x19 /* 1000 Hz / (1 + n) */
#define CONFIG 0x1A              /* low-pass filter */
#define GYRO_CONFIG 0x1B
#define ACCEL_CONFIG 0x1C
#define FIFO_ENABLE 0x23
#define INTERRUPT_STATUS 0x3A
#define USER_CONTROL 0x6A
#define POWER_1 0x6B
#define FIFO_COUNT 0x72
#define FIFO_DATA 0x74

#define LOW_PASS_94_HZ 2
#define FULL_SCALE_2000_DPS (3 << 3)
#define FULL_SCALE_16_G (3 << 3)
#define FIFO_FORCE_AND_TURN 0x78
#define FIFO_ON 0x40
#define FIFO_RESET 0x04
#define FIFO_OVERFLOWED 0x10
#define AWAKE_WITH_GYRO_CLOCK 1
#define SAMPLE_BYTES 12

static const struct frame_hello hello = {NUMBER, PLACE, 1 / 2048.0f, 1 / 16.4f, 16, 2000, RATE_HZ, NAME};

static uint16_t sequence;     /* counts every sample, sent or not: so the receiver knows what it missed */
static uint64_t last_us;      /* when the last sample was taken */
static uint64_t next_hello_us;

static void restart_fifo(void)
{
    board_write_register(USER_CONTROL, FIFO_RESET);
    board_write_register(USER_CONTROL, FIFO_ON);
}

void sensor_start(void)
{
    static const uint8_t end_of_whatever_came_before = 0;
    board_start();
    board_write_register(POWER_1, AWAKE_WITH_GYRO_CLOCK);
    board_write_register(CONFIG, LOW_PASS_94_HZ);
    board_write_register(SAMPLE_RATE_DIVIDER, 1000 / RATE_HZ - 1);
    board_write_register(GYRO_CONFIG, FULL_SCALE_2000_DPS);
    board_write_register(ACCEL_CONFIG, FULL_SCALE_16_G);
    board_write_register(FIFO_ENABLE, FIFO_FORCE_AND_TURN);
    restart_fifo();
    board_send(&end_of_whatever_came_before, 1);
    last_us = board_micros();
    next_hello_us = last_us;
}

/* Says hello at the start and every second, so that a receiver may join late. */
static void say_hello(void)
{
    uint8_t frame[FRAME_HELLO_BYTES];
    uint64_t now = board_micros();
    if (now >= next_hello_us && board_room() >= FRAME_HELLO_BYTES) {
        next_hello_us = now + HELLO_US;
        board_send(frame, (uint8_t)frame_hello(frame, &hello, now));
    }
}

static void send_sample(uint64_t taken_us)
{
    uint8_t raw[SAMPLE_BYTES];
    uint8_t frame[FRAME_SAMPLE_BYTES];
    int16_t counts[6];
    board_read_registers(FIFO_DATA, raw, SAMPLE_BYTES);
    for (int i = 0; i < 6; i++) {
        counts[i] = (int16_t)((uint16_t)raw[2 * i] << 8 | raw[2 * i + 1]);
    }
    /* Never wait for the port: a sample that finds no room is left out, and its number with it. */
    if (board_room() >= FRAME_SAMPLE_BYTES) {
        board_send(frame, (uint8_t)frame_sample(frame, NUMBER, sequence, (uint32_t)taken_us, counts));
    }
    sequence++;
    last_us = taken_us;
}

/* The FIFO ran over since nobody emptied it in time. What is in it is torn: begin anew, and count what was lost. */
static void skip_lost(void)
{
    uint64_t now = board_micros();
    restart_fifo();
    sequence += (uint16_t)((now - last_us) / PERIOD_US);
    last_us = now;
}

void sensor_poll(void)
{
    uint8_t status;
    uint8_t count[2];
    say_hello();
    board_read_registers(INTERRUPT_STATUS, &status, 1);
    if (status & FIFO_OVERFLOWED) {
        skip_lost();
        return;
    }
    board_read_registers(FIFO_COUNT, count, 2);
    uint16_t waiting = (uint16_t)(((uint16_t)count[0] << 8 | count[1]) / SAMPLE_BYTES);
    /* The newest was taken just now, since this is called often; those before it a period earlier each. */
    uint64_t now = board_micros();
    for (; waiting > 0; waiting--) {
        uint64_t taken = now - (uint64_t)(waiting - 1) * PERIOD_US;
        send_sample(taken > last_us ? taken : last_us + 1);
    }
}
