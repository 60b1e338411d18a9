package org.leafward.advisories.dates;

import java.util.Arrays;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.Bilingual;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.MarkerKind;
import org.leafward.climate.TemperatureThreshold;

/** Season markers that people ask their county for. */
public enum SeasonDate {

	/** Last freeze of spring. */
	LAST_FREEZE("last-freeze", MarkerKind.LAST_SPRING_FREEZE, "32F", "Last freeze in spring, 32 °F (0 °C)",
			"Última helada de primavera, 0 °C (32 °F)",
			"Tender plants go out once it is behind you; in one year of ten it comes after the late date.",
			"Las plantas delicadas salen cuando ya pasó; en un año de cada diez llega después de la fecha tardía."),

	/** Last hard freeze of spring. */
	LAST_HARD_FREEZE("last-hard-freeze", MarkerKind.LAST_SPRING_FREEZE, "28F",
			"Last hard freeze in spring, 28 °F (−2.2 °C)", "Última helada fuerte de primavera, −2.2 °C (28 °F)",
			"Open blossoms are lost at about this temperature; what is hardy may be set out after it.",
			"Las flores abiertas se pierden más o menos a esta temperatura; después se planta lo que es resistente."),

	/** Soil warm enough for the first seeds. */
	SOIL_WARM("warm-soil", MarkerKind.SOIL_WARMS_TO, "50F", "Soil at 50 °F (10 °C) in spring",
			"Suelo a 10 °C (50 °F) en primavera",
			"Modelled at 4 inches (10 cm), five days running. A probe in your own bed beats it.",
			"Calculado a 10 cm (4 pulgadas), cinco días seguidos. Una sonda en su arriate es más exacta."),

	/** Nights warm enough for tender plants. */
	NIGHTS_WARM("warm-nights", MarkerKind.NIGHTS_WARM_TO, "50F", "Nights at 50 °F (10 °C) in spring",
			"Noches a 10 °C (50 °F) en primavera",
			"The mean of five nights. Peppers, basil and houseplants wait for it.",
			"La media de cinco noches. El chile, la albahaca y las plantas de interior la esperan."),

	/** First freeze of fall. */
	FIRST_FREEZE("first-freeze", MarkerKind.FIRST_FALL_FREEZE, "32F", "First freeze in fall, 32 °F (0 °C)",
			"Primera helada de otoño, 0 °C (32 °F)",
			"Bring in what is tender before the early date; in one year of ten it comes sooner.",
			"Meta lo delicado antes de la fecha temprana; en un año de cada diez llega antes."),

	/** First hard freeze of fall. */
	FIRST_HARD_FREEZE("first-hard-freeze", MarkerKind.FIRST_FALL_FREEZE, "28F",
			"First hard freeze in fall, 28 °F (−2.2 °C)", "Primera helada fuerte de otoño, −2.2 °C (28 °F)",
			"It ends most of what is left of the vegetable garden. Drain hoses before it.",
			"Acaba con casi todo lo que queda en el huerto. Vacíe antes las mangueras."),

	/** Soil cool enough for bulbs. */
	SOIL_COOL("cool-soil", MarkerKind.SOIL_COOLS_TO, "60F", "Soil at 60 °F (15.6 °C) in fall",
			"Suelo a 15.6 °C (60 °F) en otoño", "Spring-flowering bulbs go in from then on until the ground freezes.",
			"Desde entonces y hasta que el suelo se hiele se plantan los bulbos de primavera."),

	/** Frozen ground. */
	GROUND_FREEZE("frozen-ground", MarkerKind.GROUND_FREEZE, null, "The ground freezes", "El suelo se hiela",
			"Modelled at 4 inches (10 cm), five days running. Water evergreens well before it.",
			"Calculado a 10 cm (4 pulgadas), cinco días seguidos. Riegue bien los siempreverdes antes.");

	private final String code;

	private final MarkerKind kind;

	private final @Nullable String threshold;

	private final Bilingual title;

	private final Bilingual use;

	SeasonDate(String code, MarkerKind kind, @Nullable String threshold, String title, String titleInSpanish,
			String use, String useInSpanish) {
		this.code = code;
		this.kind = kind;
		this.threshold = threshold;
		this.title = new Bilingual(title, titleInSpanish);
		this.use = new Bilingual(use, useInSpanish);
	}

	/**
	 * Its name in addresses.
	 * @return lower case with hyphens
	 */
	public String code() {
		return this.code;
	}

	public Bilingual title() {
		return this.title;
	}

	/**
	 * What it is good for.
	 * @return a sentence or two
	 */
	public Bilingual use() {
		return this.use;
	}

	/**
	 * Whether the late date is the cautious one.
	 * @return true for spring
	 */
	public boolean spring() {
		return this.kind.spring();
	}

	/**
	 * The marker behind it.
	 * @return at its median
	 */
	MarkerKey key() {
		return new MarkerKey(this.kind, (this.threshold != null) ? TemperatureThreshold.parse(this.threshold) : null,
				50);
	}

	/**
	 * The date of a code.
	 * @param code the code
	 * @return empty when there is none
	 */
	public static Optional<SeasonDate> of(String code) {
		return Arrays.stream(values()).filter((one) -> one.code.equals(code)).findFirst();
	}

}
