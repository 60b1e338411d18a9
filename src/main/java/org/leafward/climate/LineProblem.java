package org.leafward.climate;

/**
 * Something in a station file that could not be used; the rest of the file was.
 *
 * @param line line number in the file, from 1
 * @param what what is wrong there
 * @param mend what to do about it
 */
public record LineProblem(long line, String what, String mend) {
}
