/**
 * How much water: for beds, trees and pots, in cycles that the soil takes in, on the days
 * that local limits allow.
 */
@NamedInterface("water")
@NullMarked
package org.leafward.amounts.water;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
