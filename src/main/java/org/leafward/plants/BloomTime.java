package org.leafward.plants;

/** When a species blooms, by the seasons of its place. */
public enum BloomTime {

	LATE_WINTER, EARLY_SPRING, LATE_SPRING, EARLY_SUMMER, SUMMER, LATE_SUMMER, FALL, LATE_FALL, WINTER, ALL_YEAR

}
