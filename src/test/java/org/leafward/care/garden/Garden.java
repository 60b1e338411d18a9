package org.leafward.care.garden;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.care.core.plan.Observed;
import org.leafward.care.core.plan.PlanSite;
import org.leafward.care.core.plan.Subject;
import org.leafward.care.core.plan.WeatherAnswers;
import org.leafward.care.core.rule.SiteFacts;
import org.leafward.climate.PlaceMarkers;
import org.leafward.measure.Explanation;
import org.leafward.measure.Hemisphere;
import org.leafward.plants.Catalogue;
import org.leafward.plants.CatalogueFixture;
import org.leafward.plants.Species;
import org.leafward.plants.SpeciesId;
import org.leafward.register.Placement;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;
import org.leafward.register.SoilTexture;

/**
 * An invented garden.
 *
 * @param name also the name of its file
 * @param markers its season markers
 * @param hemisphere the half of the earth
 * @param facts what rules ask about the site
 * @param today the day on which it is planned
 * @param weather states that are known to hold or not to hold today; the rest is unknown
 * @param seen phases by "label phase" and events of the site by name, with the day
 * @param plants one line each: species, label, number, planting date and what else is
 * true of it (container, indoors-in-winter, salt)
 */
record Garden(String name, PlaceMarkers markers, Hemisphere hemisphere, SiteFacts facts, LocalDate today,
		Map<String, Boolean> weather, Map<String, LocalDate> seen, String plants) {

	static final int SEASON = 2026;

	private static final Catalogue CATALOGUE = CatalogueFixture.configured();

	static Garden of(String name, GardenClimate climate, SiteFacts facts, String today, String plants) {
		return new Garden(name, climate.markers(), climate.point().hemisphere(), facts, LocalDate.parse(today),
				Map.of(), Map.of(), plants);
	}

	Garden with(Map<String, Boolean> states, Map<String, LocalDate> logged) {
		return new Garden(this.name, this.markers, this.hemisphere, this.facts, this.today, states, logged,
				this.plants);
	}

	SiteId id() {
		return new SiteId(uuid(this.name));
	}

	List<Subject> subjects() {
		return this.plants.lines().filter((line) -> !line.isBlank()).map(this::subject).toList();
	}

	private Subject subject(String line) {
		List<String> parts = List.of(line.strip().split("\\s*\\|\\s*"));
		String else_ = (parts.size() > 4) ? parts.get(4) : "";
		Placement placement = else_.contains("container") ? Placement.CONTAINER : Placement.GROUND;
		return subject(parts.get(0), parts.get(1), Integer.parseInt(parts.get(2)), LocalDate.parse(parts.get(3)),
				placement, else_);
	}

	Subject subject(String species, String label, int count, LocalDate planted, Placement placement, String else_) {
		return Subject.of(new Planting(planting(label), id(), new SpeciesId(species), label, count, planted, placement,
				else_.contains("indoors-in-winter"), else_.contains("salt")), species(species));
	}

	static Species species(String id) {
		return CATALOGUE.find(new SpeciesId(id)).orElseThrow(() -> new AssertionError("no species " + id));
	}

	static List<Species> allSpecies() {
		return CATALOGUE.all();
	}

	private PlantingId planting(String label) {
		return new PlantingId(uuid(this.name + "/" + label));
	}

	private static UUID uuid(String name) {
		return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
	}

	PlanSite site() {
		return new PlanSite(id(), this.hemisphere, this.facts, this.markers, observed(), answers());
	}

	private WeatherAnswers answers() {
		return (condition, day) -> {
			Boolean holds = this.weather.get(condition.state());
			return new WeatherAnswers.Answer(holds, Explanation.of("Weather (%s)".formatted(condition.state()),
					(holds == null) ? "not known" : holds ? "yes, as stated for this garden" : "no, as stated"));
		};
	}

	Observed observed() {
		return new Observed() {

			@Override
			public Optional<LocalDate> phase(PlantingId planting, String phase, int season) {
				return Garden.this.seen.entrySet()
					.stream()
					.filter((entry) -> entry.getKey().endsWith(" " + phase) && season == SEASON
							&& planting(entry.getKey().substring(0, entry.getKey().lastIndexOf(' '))).equals(planting))
					.map(Map.Entry::getValue)
					.findFirst();
			}

			@Override
			public Optional<LocalDate> event(@Nullable PlantingId planting, String event, int season) {
				return Optional.ofNullable((season == SEASON) ? Garden.this.seen.get(event) : null);
			}

			@Override
			public String log() {
				throw new UnsupportedOperationException("nobody asks");
			}

		};
	}

	/** Nothing special about a site on loam, in a region. */
	static SiteFacts in(String region) {
		return new SiteFacts(region, "", SoilTexture.LOAM, Set.of());
	}

}
