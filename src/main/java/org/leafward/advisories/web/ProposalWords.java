package org.leafward.advisories.web;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.AffectedCounty;
import org.leafward.advisories.Decided;
import org.leafward.advisories.Growth;
import org.leafward.advisories.Proposal;
import org.leafward.measure.DayWindow;
import org.leafward.pages.Formats;

/** Words of proposals, for their pages. */
final class ProposalWords {

	private static final int MOST_NAMES = 4;

	private final Formats formats;

	/**
	 * Makes words.
	 * @param today the day, as dates of its year are told without it
	 */
	ProposalWords(LocalDate today) {
		this.formats = new Formats(today.getYear());
	}

	/**
	 * A proposal in the list.
	 *
	 * @param id its identifier
	 * @param title what was found
	 * @param more where, when, and whom it concerns
	 * @param open whether somebody has still to decide
	 */
	record Line(UUID id, String title, String more, boolean open) {
	}

	/**
	 * A county of a proposal.
	 *
	 * @param code its code
	 * @param name its name
	 * @param days the days that it is about
	 * @param reasons the figures
	 * @param growth what grows there of the plants concerned
	 * @param standing what became of it
	 */
	record CountyLine(String code, String name, String days, List<String> reasons, String growth, String standing) {
	}

	/**
	 * A plant group.
	 *
	 * @param name its name
	 * @param sites at how many sites
	 * @param plantings how many plantings
	 */
	record GroupLine(String name, String sites, String plantings) {
	}

	Line line(Proposal proposal) {
		List<String> names = proposal.counties().stream().map(AffectedCounty::name).toList();
		String where = (names.size() <= MOST_NAMES) ? String.join(", ", names) : "%s and %d more"
			.formatted(String.join(", ", names.subList(0, MOST_NAMES - 1)), names.size() - MOST_NAMES + 1);
		String more = "%s. %s. %s".formatted(where, days(proposal.from(), proposal.to()), grows(proposal.growth()))
				+ (proposal.open() ? "" : " " + became(proposal));
		return new Line(proposal.id().value(), proposal.condition().title().english(), more, proposal.open());
	}

	private static String became(Proposal proposal) {
		boolean composed = proposal.counties()
			.stream()
			.anyMatch((one) -> one.standing() == AffectedCounty.Standing.COMPOSED);
		return composed ? "An advisory was made of it." : "Dismissed.";
	}

	String days(LocalDate from, LocalDate to) {
		return this.formats.window(new DayWindow(from, to));
	}

	String grows(Growth growth) {
		return (growth.sites() == 0) ? "Nobody has registered such plants there."
				: "%s at %s of %s.".formatted(this.formats.count(growth.plantings(), "planting", "plantings"),
						this.formats.count(growth.sites(), "site", "sites"),
						this.formats.count(growth.people(), "person", "people"));
	}

	List<CountyLine> counties(Proposal proposal, List<Decided> decided) {
		Map<String, Growth.OfCounty> growth = proposal.growth()
			.counties()
			.stream()
			.collect(Collectors.toMap(Growth.OfCounty::county, (one) -> one));
		Map<String, Decided> by = decided.stream().collect(Collectors.toMap(Decided::county, (one) -> one));
		return proposal.counties()
			.stream()
			.map((one) -> new CountyLine(one.code(), one.name(), days(one.from(), one.to()), one.reasons(),
					grows(growth.get(one.code())), standing(one, by.get(one.code()))))
			.toList();
	}

	private String grows(Growth.@Nullable OfCounty one) {
		return (one == null || one.sites() == 0) ? "None registered."
				: "%s, %s.".formatted(this.formats.count(one.plantings(), "planting", "plantings"),
						this.formats.count(one.sites(), "site", "sites"));
	}

	private String standing(AffectedCounty county, @Nullable Decided decided) {
		String who = (decided == null) ? ""
				: " by %s on %s%s".formatted(decided.by(),
						this.formats.day(LocalDate.ofInstant(decided.at(), county.zone())),
						decided.why().isEmpty() ? "" : ": " + decided.why());
		return switch (county.standing()) {
			case OPEN -> "Waits for a decision.";
			case DISMISSED -> "Dismissed" + who + ".";
			case COMPOSED -> "An advisory was made of it" + who + ".";
		};
	}

	List<GroupLine> groups(Growth growth, Map<String, String> names) {
		return growth.groups()
			.stream()
			.map((one) -> new GroupLine(names.getOrDefault(one.group(), one.group()),
					this.formats.number(one.sites(), 0), this.formats.number(one.plantings(), 0)))
			.toList();
	}

}
