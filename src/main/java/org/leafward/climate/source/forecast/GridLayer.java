package org.leafward.climate.source.forecast;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.leafward.climate.source.FetchFailed;
import tools.jackson.databind.JsonNode;

/**
 * One layer of a grid forecast: values, each for a span of time. Spans of amounts are as
 * the office issued them; spans of other layers are drawn together where the value stays
 * the same.
 *
 * @param spans with a value, in the order of their begin
 */
record GridLayer(List<Span> spans) {

	/** A week of hours is 168; more than this is something else. */
	private static final int MOST_VALUES = 2_000;

	private static final Duration LONGEST_SPAN = Duration.ofDays(15);

	/** Factor and summand that take a unit to °C, mm, m/s or percent. */
	private static final Map<String, double[]> UNITS = Map.of("degC", new double[] { 1, 0 }, "degF",
			new double[] { 1 / 1.8, -32 / 1.8 }, "mm", new double[] { 1, 0 }, "km_h-1", new double[] { 1 / 3.6, 0 },
			"m_s-1", new double[] { 1, 0 }, "percent", new double[] { 1, 0 });

	/**
	 * A value for a span of time.
	 *
	 * @param from begin
	 * @param to end, not included
	 * @param value in °C, mm, m/s or percent
	 */
	record Span(Instant from, Instant to, double value) {

		double hours() {
			return hours(this.from, this.to);
		}

		/** Hours of the span that lie between two instants. */
		double within(Instant from, Instant to) {
			Instant begin = this.from.isAfter(from) ? this.from : from;
			Instant end = this.to.isBefore(to) ? this.to : to;
			return end.isAfter(begin) ? hours(begin, end) : 0;
		}

		private static double hours(Instant from, Instant to) {
			return Duration.between(from, to).toMinutes() / 60.0;
		}

	}

	/**
	 * Reads a layer.
	 * @param properties the {@code properties} of the answer
	 * @param name the layer's name
	 * @param units names of the units that make sense for it, without namespace
	 * @return without spans when the answer lacks the layer
	 * @throws FetchFailed when the layer isn't as documented
	 */
	static GridLayer read(JsonNode properties, String name, List<String> units) {
		JsonNode layer = properties.path(name);
		JsonNode values = layer.path("values");
		if (values.isMissingNode() || values.isEmpty()) {
			return new GridLayer(List.of());
		}
		String uom = layer.path("uom").asString("");
		String unit = uom.substring(uom.indexOf(':') + 1);
		if (!units.contains(unit)) {
			throw new FetchFailed("the forecast gives %s in '%s', which isn't one of %s".formatted(name, uom, units));
		}
		if (!values.isArray() || values.size() > MOST_VALUES) {
			throw new FetchFailed("the forecast's %s has %d values".formatted(name, values.size()));
		}
		double[] scale = UNITS.getOrDefault(unit, new double[] { 1, 0 });
		List<Span> spans = new ArrayList<>();
		for (JsonNode one : values) {
			JsonNode value = one.path("value");
			if (value.isNumber()) {
				spans.add(span(one.path("validTime").asString(""), value.asDouble() * scale[0] + scale[1], name));
			}
			else if (!value.isNull()) {
				throw new FetchFailed("the forecast's %s has a value that is no number".formatted(name));
			}
		}
		spans.sort((one, other) -> one.from().compareTo(other.from()));
		return new GridLayer(spans);
	}

	/** An ISO 8601 interval of begin and duration. */
	private static Span span(String text, double value, String name) {
		int slash = text.indexOf('/');
		try {
			Instant from = OffsetDateTime.parse(text.substring(0, Math.max(0, slash))).toInstant();
			Duration length = Duration.parse(text.substring(slash + 1));
			if (!length.isNegative() && !length.isZero() && length.compareTo(LONGEST_SPAN) <= 0) {
				return new Span(from, from.plus(length), value);
			}
		}
		catch (DateTimeException | ArithmeticException ex) {
			// said below, as for a length that makes no sense
		}
		throw new FetchFailed("the forecast's %s has a time that can't be read".formatted(name));
	}

}
