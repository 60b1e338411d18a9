package org.leafward.reminders;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.advisories.Advisories;
import org.leafward.advisories.Advisory;
import org.leafward.advisories.AdvisoryId;
import org.leafward.advisories.AdvisoryState;
import org.leafward.advisories.AdvisoryText;
import org.leafward.advisories.AlertFacts;
import org.leafward.advisories.Area;
import org.leafward.advisories.Bilingual;
import org.leafward.advisories.Category;
import org.leafward.advisories.Certainty;
import org.leafward.advisories.PlantChoice;
import org.leafward.advisories.Severity;
import org.leafward.advisories.Urgency;
import org.leafward.register.SiteId;

/** Advisories and whom they concern, in place of the module. */
public final class AdvisoriesInMemory implements Advisories {

	public static final AdvisoryText ENGLISH = new AdvisoryText("Hot, dry wind: water young trees early",
			"Wind of 30 mph (13 m/s) at 96 °F (36 °C).\nThe air is drier than it has been this year.",
			"Alder County, most of all its ridges", "Thursday to Saturday evening",
			"Leaves of young trees scorch at their edges.",
			"Water deeply at sunrise, at least 0.5 in (13 mm).\nShade what was set out this week.");

	public static final AdvisoryText SPANISH = new AdvisoryText("Viento seco y caliente: riegue temprano",
			"Viento de 13 m/s (30 mph) a 36 °C (96 °F).\nEl aire está más seco que en todo el año.",
			"Condado de Alder, sobre todo sus lomas", "De jueves a sábado por la noche",
			"Las hojas de los árboles jóvenes se queman en el borde.",
			"Riegue a fondo al amanecer, al menos 13 mm (0.5 in).\nDé sombra a lo plantado esta semana.");

	public final Map<AdvisoryId, Advisory> latest = new ConcurrentHashMap<>();

	public final Map<AdvisoryId, List<PersonId>> concerned = new ConcurrentHashMap<>();

	/** One of the kind that is told in the morning, unless it is changed. */
	public static Advisory moderate(UUID id, Instant sent, Instant onset, Instant expires) {
		return new Advisory(new AdvisoryId(id), new UUID(id.getLeastSignificantBits(), 1), 1, AdvisoryState.AHEAD,
				"hot-dry-wind", new Bilingual("Hot dry wind", "Viento seco y caliente"),
				new AlertFacts(Category.MET, Set.of(), Urgency.FUTURE, Severity.MODERATE, Certainty.LIKELY),
				Area.of(List.of("alder")), PlantChoice.EVERYTHING, Set.of("water"), sent, sent, onset, expires,
				ZoneId.of("Europe/Berlin"), ENGLISH, SPANISH);
	}

	public static Advisory with(Advisory one, String condition, Severity severity, Urgency urgency) {
		return new Advisory(one.id(), one.message(), one.number(), one.state(), condition, one.event(),
				new AlertFacts(one.facts().category(), one.facts().responses(), urgency, severity,
						one.facts().certainty()),
				one.area(), one.plants(), one.works(), one.first(), one.sent(), one.onset(), one.expires(), one.zone(),
				one.english(), one.spanish(), one.reason());
	}

	/** The message after it. */
	public static Advisory next(Advisory one, AdvisoryState state, Instant sent, @Nullable String reason) {
		return new Advisory(one.id(), new UUID(one.message().getMostSignificantBits(), one.number() + 1L),
				one.number() + 1, state, one.condition(), one.event(), one.facts(), one.area(), one.plants(),
				one.works(), one.first(), sent, (state == AdvisoryState.CANCELLED) ? sent : one.onset(), one.expires(),
				one.zone(), one.english(), one.spanish(), reason);
	}

	public static Advisory inEnglishOnly(Advisory one) {
		return new Advisory(one.id(), one.message(), one.number(), one.state(), one.condition(), one.event(),
				one.facts(), one.area(), one.plants(), one.works(), one.first(), one.sent(), one.onset(), one.expires(),
				one.zone(), one.english(), null, one.reason());
	}

	@Override
	public Optional<Advisory> find(AdvisoryId id) {
		return Optional.ofNullable(this.latest.get(id));
	}

	@Override
	public List<Advisory> current() {
		return List.copyOf(this.latest.values());
	}

	@Override
	public List<Advisory> current(String county) {
		return current();
	}

	@Override
	public List<Advisory> ofCounty(String county, int days) {
		return current();
	}

	@Override
	public Map<SiteId, List<Advisory>> currentFor(Collection<SiteId> sites) {
		throw new UnsupportedOperationException("no sites here");
	}

	@Override
	public List<Advisory> of(PersonId person, int days) {
		throw new UnsupportedOperationException("no sites here");
	}

	@Override
	public List<PersonId> concerned(AdvisoryId id, @Nullable PersonId after, int size) {
		return concernedNow(id, after, size);
	}

	@Override
	public List<PersonId> concernedNow(AdvisoryId id, @Nullable PersonId after, int size) {
		// Their order is that of the database: by octets, as their letters.
		return this.concerned.getOrDefault(id, List.of())
			.stream()
			.sorted(Comparator.comparing(PersonId::toString))
			.filter((one) -> after == null || one.toString().compareTo(after.toString()) > 0)
			.limit(size)
			.toList();
	}

}
