package org.leafward.amounts.light;

/**
 * Why a plant stays in on a day of its ramp.
 *
 * @param reason a sentence without its full stop
 */
public record Hold(String reason) {
}
