package org.leafward.quick.web;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.Microclimate;
import org.leafward.language.Language;
import org.leafward.language.Phrasebooks;
import org.leafward.language.Speech;
import org.leafward.language.Units;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;
import org.leafward.plants.Catalogue;
import org.leafward.plants.Species;
import org.leafward.plants.SpeciesId;
import org.leafward.quick.NewQuickCalendar;
import org.leafward.register.FoundPlace;
import org.leafward.register.GivenPlace;
import org.leafward.register.NewSite;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Wind;

/**
 * All that was told so far. It travels in the form from step to step and is kept nowhere;
 * nothing is checked yet.
 *
 * @param key of this form
 * @param county code of a county
 * @param latitude degrees north
 * @param longitude degrees east
 * @param elevation height above sea level
 * @param unit of the height: m or ft
 * @param zone time zone
 * @param species what is on the list or ticked
 * @param young what was planted lately
 * @param search names to look up
 * @param sun light
 * @param wind wind
 * @param soil soil; empty when not known
 * @param name what the place is called
 * @param language code of the calendar's language
 * @param system which units the calendar has
 */
record QuickForm(@Nullable String key, @Nullable String county, @Nullable String latitude, @Nullable String longitude,
		@Nullable String elevation, @Nullable String unit, @Nullable String zone, @Nullable List<String> species,
		@Nullable List<String> young, @Nullable String search, @Nullable String sun, @Nullable String wind,
		@Nullable String soil, @Nullable String name, @Nullable String language, @Nullable String system) {

	/** More is never on a page. */
	private static final int LONGEST = 100;

	/** The catalogue has fewer. */
	private static final int MOST_TICKS = 2000;

	/**
	 * A form that is not longer than pages are.
	 * @param newKey for a form without one
	 * @return with texts cut short and every member there
	 */
	QuickForm shown(Supplier<UUID> newKey) {
		return new QuickForm(key(newKey).toString(), cut(this.county), cut(this.latitude), cut(this.longitude),
				cut(this.elevation), cut(this.unit), cut(this.zone), ticks(this.species), ticks(this.young),
				(this.search != null) ? this.search.substring(0, Math.min(this.search.length(), 300)) : "",
				cut(this.sun), cut(this.wind), cut(this.soil), cut(this.name), cut(this.language), cut(this.system));
	}

	private UUID key(Supplier<UUID> newKey) {
		try {
			return UUID.fromString(cut(this.key));
		}
		catch (IllegalArgumentException ex) {
			return newKey.get();
		}
	}

	private static String cut(@Nullable String text) {
		return (text != null) ? text.substring(0, Math.min(text.length(), LONGEST)).strip() : "";
	}

	private static List<String> ticks(@Nullable List<String> ids) {
		return Stream.ofNullable(ids).flatMap(List::stream).limit(MOST_TICKS).distinct().toList();
	}

	/** The place as far as it was told. */
	GivenPlace place() {
		return new GivenPlace(this.county, this.latitude, this.longitude, this.elevation, this.unit, this.zone);
	}

	/** With what somebody pointed at, so that it isn't lost when more has to be told. */
	QuickForm pointing(GivenPlace place) {
		return new QuickForm(this.key, place.county(), place.latitude(), place.longitude(), place.elevation(),
				place.unit(), this.zone, this.species, this.young, this.search, this.sun, this.wind, this.soil,
				this.name, this.language, this.system);
	}

	QuickForm at(FoundPlace place) {
		return new QuickForm(this.key, "", String.valueOf(place.point().latitude()),
				String.valueOf(place.point().longitude()), String.valueOf(place.point().elevationMetres()), "m",
				place.zone().getId(), this.species, this.young, this.search, this.sun, this.wind, this.soil, this.name,
				this.language, this.system);
	}

	/** With these species on the list, looked up and done with. */
	QuickForm having(List<Species> list, @Nullable String stillWanted) {
		return new QuickForm(this.key, this.county, this.latitude, this.longitude, this.elevation, this.unit, this.zone,
				list.stream().map((one) -> one.id().value()).toList(), this.young, stillWanted, this.sun, this.wind,
				this.soil, this.name, this.language, this.system);
	}

	/** What is on the list, in the order of its names. */
	List<Species> listed(Catalogue catalogue) {
		Set<String> wanted = new LinkedHashSet<>(ticks(this.species));
		return catalogue.all().stream().filter((one) -> wanted.contains(one.id().value())).toList();
	}

	/** Ticks that are no species: somebody's own doing, or a catalogue that changed. */
	List<String> unknown(Catalogue catalogue) {
		Set<String> known = catalogue.all().stream().map((one) -> one.id().value()).collect(Collectors.toSet());
		return ticks(this.species).stream().filter((id) -> !known.contains(id)).map(QuickForm::cut).limit(5).toList();
	}

	/**
	 * The whole of it.
	 * @param place the place
	 * @param catalogue the species
	 * @param books say what it is called when nobody said
	 * @return ready to be made
	 */
	NewQuickCalendar toCalendar(FoundPlace place, Catalogue catalogue, Phrasebooks books) {
		Findings all = new Findings();
		Supplier<Sun> light = all.read(() -> Given.word("sun", or(this.sun, "full-sun"), Sun.class));
		Supplier<Wind> air = all.read(() -> Given.word("wind", or(this.wind, "average"), Wind.class));
		Supplier<SoilTexture> texture = all.read(() -> Given.word("soil", or(this.soil, "loam"), SoilTexture.class));
		Supplier<Language> spoken = all.read(() -> Language.of("language", or(this.language, "en")));
		String usual = place.county().isEmpty() ? "My garden" : "Garden in " + place.county();
		Supplier<String> called = all.read(() -> Given.line("name",
				or(this.name, books.of(Language.of("language", or(this.language, "en"))).say(usual))));
		Supplier<Units> measured = all.read(() -> Units.of("system", or(this.system, "both")));
		Set<SpeciesId> lately = ticks(this.young).stream()
			.filter((id) -> catalogue.all().stream().anyMatch((one) -> one.id().value().equals(id)))
			.map(SpeciesId::new)
			.collect(Collectors.toSet());
		return all.give(() -> new NewQuickCalendar(UUID.fromString(or(this.key, "")),
				new NewSite(called.get(), place.county(), place.point(), place.zone(), texture.get(), light.get(),
						air.get(), Microclimate.NONE, place.region(), Set.of()),
				listed(catalogue).stream().map(Species::id).toList(), lately,
				new Speech(spoken.get(), measured.get())));
	}

	private static String or(@Nullable String text, String otherwise) {
		return (text == null || text.isBlank()) ? otherwise : text;
	}

	/** What goes along from step to step, unseen, in the step of the place. */
	Map<String, List<String>> besidePlace() {
		return beside(List.of("key", "species", "young", "sun", "wind", "soil", "name", "language", "system"));
	}

	/** The same in the step of the plants. */
	Map<String, List<String>> besidePlants() {
		return beside(List.of("key", "latitude", "longitude", "elevation", "unit", "zone", "sun", "wind", "soil",
				"name", "language", "system"));
	}

	/** The same in the last step. */
	Map<String, List<String>> besideLight() {
		return beside(List.of("key", "latitude", "longitude", "elevation", "unit", "zone", "species", "young"));
	}

	private Map<String, List<String>> beside(List<String> fields) {
		Map<String, List<String>> beside = new LinkedHashMap<>();
		fields.forEach((field) -> beside.put(field, told(field)));
		return beside;
	}

	private List<String> told(String field) {
		return switch (field) {
			case "key" -> one(this.key);
			case "latitude" -> one(this.latitude);
			case "longitude" -> one(this.longitude);
			case "elevation" -> one(this.elevation);
			case "unit" -> one(this.unit);
			case "zone" -> one(this.zone);
			case "species" -> ticks(this.species);
			case "young" -> ticks(this.young);
			case "sun" -> one(this.sun);
			case "wind" -> one(this.wind);
			case "soil" -> one(this.soil);
			case "name" -> one(this.name);
			case "language" -> one(this.language);
			case "system" -> one(this.system);
			default -> throw new IllegalArgumentException(field);
		};
	}

	private static List<String> one(@Nullable String text) {
		return (text == null || text.isEmpty()) ? List.of() : List.of(text);
	}

}
