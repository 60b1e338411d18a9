package org.leafward.advisories.core.watch;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.leafward.advisories.Bilingual;
import org.leafward.measure.BadInput;

/** The figures that conditions can compare. */
public enum FigureKind {

	/** Lowest temperature of a day, in a shelter. */
	LOW("low", ThresholdUnit.Kind.TEMPERATURE, true, "Lowest temperature", "Temperatura mínima"),

	/** Highest temperature of a day. */
	HIGH("high", ThresholdUnit.Kind.TEMPERATURE, true, "Highest temperature", "Temperatura máxima"),

	/** Mean wind of a day. */
	WIND("wind", ThresholdUnit.Kind.SPEED, true, "Mean wind of the day", "Viento medio del día"),

	/** Lowest relative humidity of a day. */
	HUMIDITY("humidity", ThresholdUnit.Kind.PERCENT, true, "Lowest humidity", "Humedad mínima"),

	/** Rain of a day. */
	RAIN("rain", ThresholdUnit.Kind.DEPTH, true, "Rain", "Lluvia"),

	/** Light of a day beside that of a clear day, estimated. */
	LIGHT("light", ThresholdUnit.Kind.PERCENT, true, "Light of the day, of a clear day's",
			"Luz del día, de la de un día despejado"),

	/** How far the low lies above what kills one bud in ten at the stage reached. */
	KILL_MARGIN("kill-margin", ThresholdUnit.Kind.STEPS, true, "Low above the temperature that kills one bud in ten",
			"Mínima sobre la temperatura que mata uno de cada diez brotes"),

	/** What is gone of the water that plants use without stress. */
	ROOT_ZONE_USED("root-zone-used", ThresholdUnit.Kind.PERCENT, false,
			"Water gone from the root zone, of the readily available",
			"Agua agotada en la zona de raíces, de la fácilmente disponible"),

	/** Whether the ground at 4 inches is frozen, by the model. */
	GROUND_FROZEN("ground-frozen", ThresholdUnit.Kind.YES, false, "Ground frozen at 10 cm (4 in)",
			"Suelo helado a 10 cm (4 in)"),

	/** Rain of the last days. */
	RAIN_PAST("rain-past", ThresholdUnit.Kind.DEPTH, false, "Rain and melted snow of the last %d days",
			"Lluvia y nieve derretida de los últimos %d días"),

	/** Rain that is forecast. */
	RAIN_AHEAD("rain-ahead", ThresholdUnit.Kind.DEPTH, false, "Rain forecast for %d days",
			"Lluvia prevista para %d días"),

	/** Snow on the ground. */
	SNOW_DEPTH("snow-depth", ThresholdUnit.Kind.DEPTH, false, "Snow on the ground", "Nieve en el suelo"),

	/** Mean temperature of the soil at 4 inches over the last days. */
	SOIL("soil", ThresholdUnit.Kind.TEMPERATURE, false, "Soil at 10 cm (4 in), mean of %d days",
			"Suelo a 10 cm (4 in), media de %d días"),

	/** The same of the upper two inches. */
	UPPER_SOIL("upper-soil", ThresholdUnit.Kind.TEMPERATURE, false, "Upper 5 cm (2 in) of soil, mean of %d days",
			"Los 5 cm (2 in) de arriba del suelo, media de %d días"),

	/** Degree-days up to yesterday. */
	DEGREE_DAYS("degree-days", ThresholdUnit.Kind.HEAT, false, "Degree-days so far", "Grados-día hasta ahora"),

	/** Dull days in a row before today. */
	DULL_DAYS("dull-days", ThresholdUnit.Kind.DAYS, false, "Dull days in a row", "Días nublados seguidos"),

	/** Lowest temperature since midsummer. */
	COLDEST_SINCE_SUMMER("coldest-since-summer", ThresholdUnit.Kind.TEMPERATURE, false, "Coldest night since midsummer",
			"Noche más fría desde mediados del verano"),

	/** Days of this winter on which roads were likely salted. */
	ICY_DAYS("icy-days", ThresholdUnit.Kind.DAYS, false, "Days of this winter with snow or rain in frost",
			"Días de este invierno con nieve o lluvia y helada"),

	/** Days since the last of them. */
	SINCE_ICY("since-icy", ThresholdUnit.Kind.DAYS, false, "Days since the last such day",
			"Días desde el último de ellos"),

	/** Days until a marker of the season, negative after it. */
	DAYS_TO("days-to", ThresholdUnit.Kind.DAYS, false, "Days until the usual date", "Días hasta la fecha usual");

	private final String code;

	private final ThresholdUnit.Kind unit;

	private final boolean ofDay;

	private final String english;

	private final String spanish;

	FigureKind(String code, ThresholdUnit.Kind unit, boolean ofDay, String english, String spanish) {
		this.code = code;
		this.unit = unit;
		this.ofDay = ofDay;
		this.english = english;
		this.spanish = spanish;
	}

	public String code() {
		return this.code;
	}

	public ThresholdUnit.Kind unit() {
		return this.unit;
	}

	/**
	 * Whether it is a figure of a forecast day.
	 * @return true for what only {@code on-one-day} can ask
	 */
	public boolean ofDay() {
		return this.ofDay;
	}

	/**
	 * Whether it counts over a number of days.
	 * @return true where its label has them
	 */
	public boolean overDays() {
		return this.english.contains("%d");
	}

	/**
	 * What it is.
	 * @param days of the figures that count over some
	 * @return in both languages
	 */
	public Bilingual label(int days) {
		return overDays() ? new Bilingual(this.english.formatted(days), this.spanish.formatted(days))
				: new Bilingual(this.english, this.spanish);
	}

	/**
	 * The figure of a code.
	 * @param code as {@link #code} gives it
	 * @return the kind
	 * @throws BadInput when there is none
	 */
	public static FigureKind of(String code) {
		return Arrays.stream(values())
			.filter((one) -> one.code.equals(code))
			.findFirst()
			.orElseThrow(() -> new BadInput("there is no figure '%s'".formatted(code), "figure",
					"write one of " + Arrays.stream(values()).map(FigureKind::code).collect(Collectors.joining(", "))));
	}

}
