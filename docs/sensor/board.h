/* What sensor.c needs of a board. board_avr.c has it for one; for another, write these seven. */
#ifndef BOARD_H
#define BOARD_H

#include <stdint.h>

/* Clock, bus and serial port ready for use. */
void board_start(void);

/* Microseconds since the board was started; never comes round. */
uint64_t board_micros(void);

/* Registers of the six-axis sensor. Reading a FIFO register again and again must not count the register up. */
void board_write_register(uint8_t address, uint8_t value);
void board_read_registers(uint8_t address, uint8_t *into, uint8_t count);

/* Bytes the serial port takes at the moment without waiting, and giving it some. */
uint8_t board_room(void);
void board_send(const uint8_t *bytes, uint8_t count);

#endif
