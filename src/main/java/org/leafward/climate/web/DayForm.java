package org.leafward.climate.web;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.ObservedDay;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.measure.BadInput;

/**
 * A day's observations as the API takes them; what isn't known is left out.
 *
 * @param date YYYY-MM-DD
 * @param minimumC °C
 * @param maximumC °C
 * @param precipitationMm mm
 * @param snowDepthMm depth of snow on the ground, mm
 * @param windMs mean speed, m/s
 */
record DayForm(@Nullable String date, @Nullable Double minimumC, @Nullable Double maximumC,
		@Nullable Double precipitationMm, @Nullable Double snowDepthMm, @Nullable Double windMs) {

	/** Most days in one request. */
	static final int MOST = 400;

	/**
	 * Checks and converts days.
	 * @param forms as given
	 * @param today no day after tomorrow of this day, which is UTC's, can have been
	 * @return the days
	 * @throws BadInput naming the field that is wrong
	 */
	static List<ObservedDay> days(List<@Nullable DayForm> forms, LocalDate today) {
		if (forms.isEmpty() || forms.size() > MOST) {
			throw new BadInput("there are %d days".formatted(forms.size()), "body",
					"give an array of 1 to %d days".formatted(MOST));
		}
		Set<LocalDate> seen = new HashSet<>();
		List<ObservedDay> days = new ArrayList<>();
		for (int at = 0; at < forms.size(); at++) {
			DayForm form = forms.get(at);
			String where = "[%d]".formatted(at);
			if (form == null) {
				throw new BadInput("the day is null", where, "leave it out");
			}
			ObservedDay day = form.day(where, today);
			if (!seen.add(day.day())) {
				throw new BadInput("%s is given twice".formatted(day.day()), where + ".date", "give each day once");
			}
			days.add(day);
		}
		return days;
	}

	private ObservedDay day(String where, LocalDate today) {
		LocalDate day = date(where + ".date");
		if (day.getYear() < DailyRecord.FIRST_YEAR || day.isAfter(today.plusDays(1))) {
			throw new BadInput("%s is before %d or still to come".formatted(day, DailyRecord.FIRST_YEAR),
					where + ".date", "give days that have been");
		}
		Integer minimum = value(Element.TMIN, this.minimumC, 10, where + ".minimumC");
		Integer maximum = value(Element.TMAX, this.maximumC, 10, where + ".maximumC");
		Integer precipitation = value(Element.PRCP, this.precipitationMm, 10, where + ".precipitationMm");
		Integer snow = value(Element.SNWD, this.snowDepthMm, 1, where + ".snowDepthMm");
		Integer wind = value(Element.AWND, this.windMs, 10, where + ".windMs");
		if (minimum != null && maximum != null && minimum > maximum) {
			throw new BadInput("the minimum %s is above the maximum %s".formatted(this.minimumC, this.maximumC),
					where + ".minimumC", "correct one of them");
		}
		if (minimum == null && maximum == null && precipitation == null && snow == null && wind == null) {
			throw new BadInput("the day has no value", where,
					"give minimumC, maximumC, precipitationMm, snowDepthMm or windMs");
		}
		return new ObservedDay(day, minimum, maximum, precipitation, snow, wind);
	}

	private LocalDate date(String where) {
		try {
			return LocalDate.parse((this.date != null) ? this.date : "");
		}
		catch (DateTimeException ex) {
			throw new BadInput("'%s' is no date".formatted((this.date != null) ? this.date : ""), where,
					"write the day as YYYY-MM-DD");
		}
	}

	private static @Nullable Integer value(Element element, @Nullable Double given, int scale, String where) {
		if (given == null) {
			return null;
		}
		double scaled = given * scale;
		if (!(scaled >= element.lowest() && scaled <= element.highest())) {
			throw new BadInput("%s is outside %s to %s".formatted(given, element.lowest() / (double) scale,
					element.highest() / (double) scale), where, "correct or leave out the value");
		}
		return (int) Math.round(scaled);
	}

}
