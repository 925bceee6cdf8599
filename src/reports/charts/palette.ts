/*
 * Colours that people with any of the common forms of colour blindness tell apart: M. Okabe and K. Ito, Color Universal
 * Design, 2008 (values recalled). No chart needs them: what a colour says is said by a shape, a dash or a word as well, so
 * that a chart can be printed in black and white.
 */
export const BLACK = '#000000';
export const SKY_BLUE = '#56B4E9';
export const BLUE = '#0072B2';
export const VERMILLION = '#D55E00';

/** What is behind the marks. */
export const WHITE = '#FFFFFF';
export const LIGHT_GREY = '#DDDDDD';
export const DARK_GREY = '#444444';
