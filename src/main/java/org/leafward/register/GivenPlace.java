package org.leafward.register;

import org.jspecify.annotations.Nullable;

/**
 * A place as somebody gives it in a form: a county, or coordinates, which go before it;
 * nothing is checked yet.
 *
 * @param county code of a county
 * @param latitude degrees north
 * @param longitude degrees east
 * @param elevation height above sea level; empty where county or station tell it
 * @param unit of the height: m or ft; metres when left out
 * @param zone time zone; needed where no county tells it
 */
public record GivenPlace(@Nullable String county, @Nullable String latitude, @Nullable String longitude,
		@Nullable String elevation, @Nullable String unit, @Nullable String zone) {
}
