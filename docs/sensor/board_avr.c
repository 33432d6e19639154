/*
 * The board for sensor.c: an 8-bit ATmega328P at 16 MHz, the six-axis sensor on its two-wire bus at 400 kHz, the serial
 * port at 250 000 bits a second (which 16 MHz gives exactly). Registers are those of the controller's data sheet.
 *
 *   avr-gcc -std=gnu99 -Os -mmcu=atmega328p -DF_CPU=16000000UL -o sensor.elf sensor.c frame.c board_avr.c
 */
#include <avr/interrupt.h>
#include <avr/io.h>

#include "board.h"
#include "sensor.h"

#define BAUD 250000UL
#define BUS_HZ 400000UL
#define WRITE_TO_SENSOR 0xD0 /* its address 68 hex, shifted, then 0 to write or 1 to read */
#define READ_FROM_SENSOR 0xD1

static volatile uint64_t rounds;      /* of timer 1, 65536 half microseconds each */
static volatile uint8_t queue[256];   /* its indices come round by themselves */
static volatile uint8_t queue_start;
static volatile uint8_t queue_end;

ISR(TIMER1_OVF_vect)
{
    rounds++;
}

ISR(USART_UDRE_vect)
{
    if (queue_start == queue_end) {
        UCSR0B &= (uint8_t)~(1 << UDRIE0);
    } else {
        UDR0 = queue[queue_start++];
    }
}

void board_start(void)
{
    TWBR = (uint8_t)((F_CPU / BUS_HZ - 16) / 2);
    TCCR1A = 0;
    TCCR1B = 1 << CS11; /* 16 MHz / 8 */
    TIMSK1 = 1 << TOIE1;
    UCSR0A = 1 << U2X0;
    UBRR0 = (uint16_t)(F_CPU / 8 / BAUD - 1);
    UCSR0C = 1 << UCSZ01 | 1 << UCSZ00; /* eight bits, no parity, one stop bit */
    UCSR0B = 1 << TXEN0;
    sei();
}

uint64_t board_micros(void)
{
    uint8_t interrupts = SREG;
    cli();
    uint16_t ticks = TCNT1;
    uint64_t whole = rounds;
    /* The timer may have come round between cli() and reading it. */
    if ((TIFR1 & (1 << TOV1)) && ticks < 0x8000) {
        whole++;
    }
    SREG = interrupts;
    return (whole << 16 | ticks) >> 1;
}

static void bus(uint8_t command)
{
    TWCR = (uint8_t)(command | 1 << TWINT | 1 << TWEN);
    while (!(TWCR & (1 << TWINT))) {
    }
}

static void bus_start(uint8_t address)
{
    bus(1 << TWSTA);
    TWDR = address;
    bus(0);
}

static void bus_write(uint8_t byte)
{
    TWDR = byte;
    bus(0);
}

static void bus_stop(void)
{
    TWCR = 1 << TWINT | 1 << TWEN | 1 << TWSTO;
    while (TWCR & (1 << TWSTO)) {
    }
}

void board_write_register(uint8_t address, uint8_t value)
{
    bus_start(WRITE_TO_SENSOR);
    bus_write(address);
    bus_write(value);
    bus_stop();
}

void board_read_registers(uint8_t address, uint8_t *into, uint8_t count)
{
    bus_start(WRITE_TO_SENSOR);
    bus_write(address);
    bus_start(READ_FROM_SENSOR);
    while (count-- > 0) {
        bus(count > 0 ? 1 << TWEA : 0); /* the last byte is not acknowledged */
        *into++ = TWDR;
    }
    bus_stop();
}

uint8_t board_room(void)
{
    return (uint8_t)(255 - (uint8_t)(queue_end - queue_start));
}

void board_send(const uint8_t *bytes, uint8_t count)
{
    while (count-- > 0) {
        queue[queue_end] = *bytes++; /* first the byte, then the news of it */
        queue_end++;
    }
    UCSR0B |= 1 << UDRIE0;
}

int main(void)
{
    sensor_start();
    for (;;) {
        sensor_poll();
    }
}
