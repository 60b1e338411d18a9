package org.leafward.advisories.desk;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.leafward.advisories.AdvisoryText;
import org.leafward.advisories.AffectedCounty;
import org.leafward.advisories.AlertDefaults;
import org.leafward.advisories.Category;
import org.leafward.advisories.Certainty;
import org.leafward.advisories.DraftText;
import org.leafward.advisories.Proposal;
import org.leafward.advisories.Response;
import org.leafward.advisories.Severity;
import org.leafward.advisories.Urgency;
import org.leafward.advisories.core.chain.Content;
import org.leafward.advisories.core.chain.Outlines;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.springframework.stereotype.Component;

/** What a form begins with. */
@Component
class Prefilled {

	/** What a cancellation may change. */
	private static final List<String> WORDS_OF_CANCEL = List.of("headline", "what", "toDo", "headlineEs", "whatEs",
			"toDoEs", "reason");

	private final Regions regions;

	Prefilled(Regions regions) {
		this.regions = regions;
	}

	/**
	 * A form for a new advisory.
	 * @param counties those that its writer serves; a single one is chosen
	 * @param now the moment
	 * @return usual facts, from the next full hour on
	 */
	DraftFields blank(List<County> counties, Instant now) {
		ZoneId zone = counties.stream().map(County::zone).findFirst().orElse(ZoneId.of("UTC"));
		ZonedDateTime hour = now.atZone(zone).truncatedTo(ChronoUnit.HOURS).plusHours(1);
		Map<String, List<String>> values = new TreeMap<>();
		if (counties.size() == 1) {
			values.put("counties", List.of(counties.get(0).code()));
		}
		one(values, "category", Category.MET.cap());
		one(values, "urgency", Urgency.FUTURE.cap());
		one(values, "severity", Severity.MODERATE.cap());
		one(values, "certainty", Certainty.LIKELY.cap());
		one(values, "responses", Response.PREPARE.cap());
		one(values, "onset", Desk.local(hour.toInstant(), zone));
		one(values, "expires", Desk.local(hour.plusHours(24).toInstant(), zone));
		return new DraftFields(values);
	}

	private static void one(Map<String, List<String>> values, String name, String value) {
		values.put(name, List.of(value));
	}

	/**
	 * A form for what the watch proposes.
	 * @param proposal the proposal
	 * @param served codes of the counties that the writer serves
	 * @param now the moment
	 * @return its words, facts, days and plants
	 */
	DraftFields of(Proposal proposal, Set<String> served, Instant now) {
		List<AffectedCounty> counties = proposal.counties()
			.stream()
			.filter((one) -> served.contains(one.code()))
			.toList();
		ZoneId zone = counties.stream()
			.flatMap((one) -> this.regions.find(one.code()).stream())
			.map(County::zone)
			.findFirst()
			.orElse(ZoneId.of("UTC"));
		Map<String, List<String>> values = new TreeMap<>();
		values.put("counties", counties.stream().map(AffectedCounty::code).toList());
		one(values, "event", proposal.condition().title().english());
		one(values, "eventEs", proposal.condition().title().spanish());
		AlertDefaults alert = proposal.condition().alert();
		one(values, "category", alert.category());
		one(values, "urgency", alert.urgency());
		one(values, "severity", alert.severity());
		one(values, "certainty", alert.certainty());
		values.put("responses", alert.responses().stream().sorted().toList());
		values.put("groups", sorted(proposal.condition().concerns().groups()));
		values.put("traits", sorted(proposal.condition().concerns().traits()));
		values.put("species", sorted(proposal.condition().concerns().species()));
		Instant hour = now.truncatedTo(ChronoUnit.HOURS).plus(1, ChronoUnit.HOURS);
		Instant from = proposal.from().atTime(LocalTime.MIDNIGHT).atZone(zone).toInstant();
		Instant to = proposal.to().plusDays(1).atTime(LocalTime.MIDNIGHT).atZone(zone).toInstant();
		Instant onset = from.isBefore(hour) ? hour : from;
		one(values, "onset", Desk.local(onset, zone));
		one(values, "expires", Desk.local(to.isAfter(onset) ? to : onset.plus(24, ChronoUnit.HOURS), zone));
		draft(values, proposal.english(), "");
		draft(values, proposal.spanish(), "Es");
		return new DraftFields(values);
	}

	private static List<String> sorted(Collection<String> values) {
		return values.stream().sorted().toList();
	}

	private static void draft(Map<String, List<String>> values, DraftText text, String ending) {
		one(values, "headline" + ending, text.headline());
		one(values, "what" + ending, text.what());
		one(values, "where" + ending, text.where());
		one(values, "when" + ending, text.when());
		one(values, "impacts" + ending, text.impacts());
		one(values, "toDo" + ending, text.toDo());
	}

	/**
	 * A form for an update.
	 * @param content what was sent last
	 * @return the same
	 */
	DraftFields of(Content content) {
		Map<String, List<String>> values = new TreeMap<>();
		values.put("counties", sorted(content.area().counties()));
		one(values, "polygon", Outlines.write(content.area().rings()));
		one(values, "event", content.event().english());
		one(values, "eventEs", content.event().spanish());
		one(values, "category", content.facts().category().cap());
		one(values, "urgency", content.facts().urgency().cap());
		one(values, "severity", content.facts().severity().cap());
		one(values, "certainty", content.facts().certainty().cap());
		values.put("responses", content.facts().responses().stream().map(Response::cap).toList());
		values.put("groups", sorted(content.plants().groups()));
		values.put("traits", sorted(content.plants().traits()));
		values.put("species", sorted(content.plants().species()));
		values.put("works", sorted(content.works()));
		one(values, "onset", Desk.local(content.onset(), content.zone()));
		one(values, "expires", Desk.local(content.expires(), content.zone()));
		text(values, content.english(), "");
		if (content.spanish() != null) {
			text(values, content.spanish(), "Es");
		}
		return new DraftFields(values);
	}

	private static void text(Map<String, List<String>> values, AdvisoryText text, String ending) {
		draft(values,
				new DraftText(text.headline(), text.what(), text.where(), text.when(), text.impacts(), text.toDo()),
				ending);
	}

	/**
	 * A form for a cancellation.
	 * @param content what was sent last
	 * @param now the moment
	 * @return the same places and plants, with words that say that it is over
	 */
	DraftFields calledOff(Content content, Instant now) {
		Map<String, List<String>> values = new TreeMap<>(of(content).values());
		one(values, "urgency", Urgency.PAST.cap());
		values.put("responses", List.of(Response.ALL_CLEAR.cap()));
		ending(values, content.english(), "", "Called off: ", "From now on.",
				"What was expected is not expected any more.");
		if (content.spanish() != null) {
			ending(values, content.spanish(), "Es", "Cancelado: ", "Desde ahora.", "Ya no se espera lo anunciado.");
		}
		one(values, "onset", Desk.local(now, content.zone()));
		one(values, "expires", Desk.local(now.plus(24, ChronoUnit.HOURS), content.zone()));
		return new DraftFields(values);
	}

	private static void ending(Map<String, List<String>> values, AdvisoryText text, String ending, String begin,
			String when, String impacts) {
		String headline = begin + text.headline();
		one(values, "headline" + ending, headline.substring(0, Math.min(headline.length(), AdvisoryText.HEADLINE)));
		values.put("what" + ending, List.of());
		one(values, "when" + ending, when);
		one(values, "impacts" + ending, impacts);
		values.put("toDo" + ending, List.of());
	}

	/**
	 * A form of a cancellation after somebody wrote in it.
	 * @param before the form before
	 * @param given what was given
	 * @return the words that were given; all else as it was sent
	 */
	DraftFields onlyWords(DraftFields before, DraftFields given) {
		DraftFields fields = before;
		for (String name : WORDS_OF_CANCEL) {
			fields = fields.with(name, given.list(name));
		}
		return fields;
	}

}
