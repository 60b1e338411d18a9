package org.leafward.climate.source.forecast;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleBinaryOperator;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.ForecastDay;

/** Builds days of the place's own calendar out of layers. */
final class GridDays {

	private static final Duration DAY = Duration.ofDays(1);

	/** Hours of a day that a layer may lack. */
	private static final double MOST_HOURS_MISSING = 1;

	private final ZoneId zone;

	GridDays(ZoneId zone) {
		this.zone = zone;
	}

	/**
	 * The layers that make up days.
	 *
	 * @param minimum lowest temperatures of nights, °C
	 * @param maximum highest temperatures of days, °C
	 * @param precipitation amounts, mm
	 * @param snowfall depths of new snow, mm
	 * @param wind speeds, m/s
	 * @param humidity relative, percent
	 */
	record Layers(GridLayer minimum, GridLayer maximum, GridLayer precipitation, GridLayer snowfall, GridLayer wind,
			GridLayer humidity) {
	}

	/**
	 * Builds the days that have a minimum or a maximum.
	 * @param layers the layers
	 * @param first days before this one are over and left out
	 * @param most greatest number of days
	 * @return in their order
	 */
	List<ForecastDay> build(Layers layers, LocalDate first, int most) {
		Map<LocalDate, Double> minima = extremes(layers.minimum(), Math::min);
		Map<LocalDate, Double> maxima = extremes(layers.maximum(), Math::max);
		TreeMap<LocalDate, Boolean> days = new TreeMap<>();
		minima.keySet().forEach((day) -> days.put(day, true));
		maxima.keySet().forEach((day) -> days.put(day, true));
		List<ForecastDay> built = new ArrayList<>();
		for (LocalDate day : days.tailMap(first).keySet()) {
			if (built.size() < most) {
				built.add(new ForecastDay(day, tenths(minima.get(day)), tenths(maxima.get(day)),
						tenths(sum(layers.precipitation(), day)), whole(sum(layers.snowfall(), day)),
						tenths(mean(layers.wind(), day)), whole(lowest(layers.humidity(), day))));
			}
		}
		return built;
	}

	/**
	 * A night's minimum belongs to the day it ends on, and its span runs from evening to
	 * morning, so that its middle lies behind midnight; the middle of a maximum's span
	 * lies about noon.
	 */
	private Map<LocalDate, Double> extremes(GridLayer layer, DoubleBinaryOperator more) {
		Map<LocalDate, Double> found = new TreeMap<>();
		for (GridLayer.Span span : layer.spans()) {
			Duration length = Duration.between(span.from(), span.to());
			Duration first = (length.compareTo(DAY) > 0) ? DAY : length;
			for (Instant middle = span.from().plus(first.dividedBy(2)); middle
				.isBefore(span.to()); middle = middle.plus(DAY)) {
				found.merge(middle.atZone(this.zone).toLocalDate(), span.value(), more::applyAsDouble);
			}
		}
		return found;
	}

	/** An amount whose span reaches over midnight is shared out by hours. */
	private @Nullable Double sum(GridLayer layer, LocalDate day) {
		if (!covers(layer, day)) {
			return null;
		}
		double sum = 0;
		for (GridLayer.Span span : layer.spans()) {
			sum += span.value() * span.within(begin(day), end(day)) / span.hours();
		}
		return sum;
	}

	private @Nullable Double mean(GridLayer layer, LocalDate day) {
		if (!covers(layer, day)) {
			return null;
		}
		double sum = 0;
		double hours = 0;
		for (GridLayer.Span span : layer.spans()) {
			double part = span.within(begin(day), end(day));
			sum += span.value() * part;
			hours += part;
		}
		return (hours > 0) ? sum / hours : null;
	}

	private @Nullable Double lowest(GridLayer layer, LocalDate day) {
		if (!covers(layer, day)) {
			return null;
		}
		return layer.spans()
			.stream()
			.filter((span) -> span.within(begin(day), end(day)) > 0)
			.map(GridLayer.Span::value)
			.min(Double::compare)
			.orElse(null);
	}

	/**
	 * Whether a layer tells of the whole day, or of all that is left of it on the day the
	 * layer begins. Half a day's rain at the far end would look like a dry day.
	 */
	private boolean covers(GridLayer layer, LocalDate day) {
		if (layer.spans().isEmpty()) {
			return false;
		}
		Instant layerBegin = layer.spans().get(0).from();
		Instant from = layerBegin.isAfter(begin(day)) ? layerBegin : begin(day);
		double needed = Duration.between(from, end(day)).toMinutes() / 60.0;
		double told = layer.spans().stream().mapToDouble((span) -> span.within(from, end(day))).sum();
		return needed > 0 && told >= needed - MOST_HOURS_MISSING && told > 0;
	}

	private Instant begin(LocalDate day) {
		return day.atStartOfDay(this.zone).toInstant();
	}

	private Instant end(LocalDate day) {
		return begin(day.plusDays(1));
	}

	private static @Nullable Integer tenths(@Nullable Double value) {
		return (value != null) ? (int) Math.round(value * 10) : null;
	}

	private static @Nullable Integer whole(@Nullable Double value) {
		return (value != null) ? (int) Math.round(value) : null;
	}

}
