package org.leafward.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The ways through the pages that stand at the head of each: the four or so that this
 * viewer goes most, and the rest by task behind one word. A phone shows four on two
 * lines; eleven took five.
 *
 * @param first what always shows
 * @param rest what "More" opens
 */
public record Ways(List<Way> first, List<Part> rest) {

	private static final Way WEEK = new Way("This week", "/", "week");

	private static final Way SITES = new Way("My sites", "/sites", "sites");

	private static final Way CALENDAR = new Way("Calendar", "/subscribe", "subscribe");

	private static final Way LEAVES = new Way("Why brown leaves?", "/cases", "cases");

	private static final Way GROUPS = new Way("Groups", "/groups", "groups");

	private static final Way RULES = new Way("Care rules", "/rules", "rules");

	private static final Way REMINDERS = new Way("Reminders", "/reminders", "reminders", "outbox");

	private static final Way CALCULATORS = new Way("Calculators", "/calculators", "calculators");

	private static final Way ADVISORIES = new Way("Advisories", "/advisories", "public-advisories");

	private static final Way ALERT_DESK = new Way("Alert desk", "/advisories/compose", "advisories");

	private static final Way HELP_DESK = new Way("Help desk", "/help-desk", "help-desk");

	private static final Way QUICK = new Way("Make a calendar", "/quick", "quick");

	private static final Way COUNTY_CALENDARS = new Way("County calendars", "/county-calendars", "county-calendars");

	private static final Way SEASON_DATES = new Way("Season dates", "/season-dates", "season-dates");

	private static final Way STATIONS = new Way("Stations", "/stations", "stations");

	private static final Way ACCOUNT = new Way("My account", "/me", "me");

	private static final Way PEOPLE = new Way("People", "/accounts", "accounts");

	private static final Way OUTBOX = new Way("Outbox", "/outbox", "outbox");

	private static final Way SIGN_IN = new Way("Sign in", "/sign-in", "sign-in");

	private static final Way CHANGE_PERSON = new Way("Change person", "/people", "people");

	public Ways {
		first = List.copyOf(first);
		rest = rest.stream().filter((part) -> !part.ways().isEmpty()).toList();
	}

	/**
	 * The ways of somebody.
	 * @param viewer who is looking
	 * @return what they may open; each way once
	 */
	public static Ways of(Viewer viewer) {
		if (viewer.stranger()) {
			return new Ways(List.of(QUICK, ADVISORIES, viewer.demo() ? CHANGE_PERSON : SIGN_IN),
					List.of(new Part("Look up", List.of(CALCULATORS, COUNTY_CALENDARS, SEASON_DATES, STATIONS))));
		}
		List<Way> first = first(viewer);
		boolean person = viewer.person() != null;
		List<Way> plants = new ArrayList<>(List.of(SITES, CALENDAR));
		plants.addAll(person ? List.of(REMINDERS, LEAVES) : List.of(OUTBOX, LEAVES));
		List<Way> others = new ArrayList<>(List.of(GROUPS));
		if (viewer.specialist()) {
			others.addAll(List.of(ALERT_DESK, HELP_DESK));
		}
		else if (viewer.coordinator()) {
			others.add(HELP_DESK);
		}
		List<Way> you = new ArrayList<>();
		you.add(ACCOUNT);
		if (viewer.operator()) {
			you.add(PEOPLE);
		}
		if (viewer.demo()) {
			you.add(CHANGE_PERSON);
		}
		return new Ways(first,
				List.of(new Part("Your plants", without(plants, first)),
						new Part("Look up",
								without(List.of(CALCULATORS, SEASON_DATES, ADVISORIES, RULES, STATIONS), first)),
						new Part("With others", without(others, first)), new Part("You", without(you, first))));
	}

	private static List<Way> first(Viewer viewer) {
		if (viewer.operator()) {
			return List.of(WEEK, SITES, PEOPLE, ALERT_DESK);
		}
		if (viewer.specialist()) {
			return List.of(WEEK, ALERT_DESK, RULES, HELP_DESK);
		}
		if (viewer.coordinator()) {
			return List.of(WEEK, GROUPS, SITES, HELP_DESK);
		}
		return List.of(WEEK, SITES, CALENDAR, LEAVES);
	}

	private static List<Way> without(List<Way> all, List<Way> first) {
		return all.stream().filter((way) -> !first.contains(way)).toList();
	}

	/**
	 * Whether a page is among those that "More" opens.
	 * @param section what the page belongs to
	 * @return true, so that the word can be marked while the list is shut
	 */
	public boolean restHolds(String section) {
		return this.rest.stream().flatMap((part) -> part.ways().stream()).anyMatch((way) -> way.holds(section));
	}

	/**
	 * What belongs together.
	 *
	 * @param words what it is for
	 * @param ways in the order in which they are asked for
	 */
	public record Part(String words, List<Way> ways) {

		public Part {
			ways = List.copyOf(ways);
		}

	}

	/**
	 * One way.
	 *
	 * @param words what the reader sees
	 * @param address where it leads
	 * @param sections the pages that belong to it, by the name that they give themselves
	 */
	public record Way(String words, String address, Set<String> sections) {

		public Way {
			sections = Set.copyOf(sections);
		}

		Way(String words, String address, String... sections) {
			this(words, address, Set.of(sections));
		}

		/**
		 * Whether it leads to a page.
		 * @param section what the page belongs to
		 * @return false for a page that says nothing of it
		 */
		public boolean holds(String section) {
			return this.sections.contains(section);
		}

	}

}
