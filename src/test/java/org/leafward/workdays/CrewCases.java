package org.leafward.workdays;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.zip.CRC32;
import org.leafward.measure.DayWindow;
import org.leafward.measure.GeoPoint;
import org.leafward.workdays.core.plan.CrewDate;
import org.leafward.workdays.core.plan.CrewMember;
import org.leafward.workdays.core.plan.CrewPlan;
import org.leafward.workdays.core.plan.CrewProblem;
import org.leafward.workdays.core.plan.CrewRules;
import org.leafward.workdays.core.plan.CrewSite;
import org.leafward.workdays.core.plan.CrewTask;
import org.leafward.workdays.core.plan.HoldOff;
import org.leafward.workdays.core.plan.PlanCosts;
import org.leafward.workdays.core.plan.TravelRules;
import org.leafward.workdays.core.plan.Unplaced;
import org.leafward.workdays.solver.SearchPlanner;

/**
 * Invented problems from a seed. The generator is java.util.Random, whose numbers are
 * fixed by its documentation, so that a case is the same everywhere.
 */
public final class CrewCases {

	private static final LocalDate FIRST = LocalDate.of(2027, 3, 6);

	private static final List<String> SKILLS = List.of("saw", "pesticide licence", "driving");

	private static final List<String> TOOLS = List.of("chipper", "spreader");

	/** To make one can take a plan. */
	private static final Map<Shape, CrewProblem> MADE = new ConcurrentHashMap<>();

	private CrewCases() {
	}

	/**
	 * How large and how tight.
	 *
	 * @param name what it is called
	 * @param sites 1 and up
	 * @param tasks 1 and up
	 * @param dates 1 and up, a week apart
	 * @param people members of the group
	 * @param attendance how many percent of them come
	 * @param teams into how many teams they go at most
	 * @param seed of the generator
	 * @param past what stood before
	 */
	public record Shape(String name, int sites, int tasks, int dates, int people, int attendance, int teams, long seed,
			Past past) {

		/** Pins, locked dates, scarce tools and a limit of dates come with a past. */
		boolean extras() {
			return this.past != Past.NONE;
		}

	}

	/** What stood before a problem. */
	public enum Past {

		/** It is planned for the first time. */
		NONE,

		/** A third of the tasks stood on some day of their window, which is no plan. */
		CHANCE,

		/** It was planned before anybody pinned a task, locked a day or ruled one out. */
		PLANNED

	}

	/** The ten recorded cases, and one of which the past is no plan. */
	public static final List<Shape> RECORDED = List.of(new Shape("one school garden", 1, 25, 6, 8, 60, 1, 1, Past.NONE),
			new Shape("few sites, few people", 4, 40, 8, 10, 50, 1, 2, Past.NONE),
			new Shape("few sites, many people", 6, 80, 10, 30, 60, 2, 3, Past.NONE),
			new Shape("a town", 12, 150, 13, 24, 50, 2, 4, Past.NONE),
			new Shape("a town with wishes", 12, 150, 13, 24, 50, 2, 5, Past.PLANNED),
			new Shape("far apart, scarce hands", 20, 300, 20, 20, 40, 2, 6, Past.NONE),
			new Shape("a county, one team", 30, 400, 26, 40, 30, 1, 7, Past.NONE),
			new Shape("a county, full", 40, 600, 26, 60, 40, 4, 8, Past.NONE),
			new Shape("a county, scarce", 40, 600, 26, 60, 20, 3, 9, Past.NONE),
			new Shape("a county with wishes", 40, 600, 26, 60, 40, 4, 10, Past.PLANNED),
			new Shape("a town, past by chance", 12, 150, 13, 24, 50, 2, 5, Past.CHANCE));

	/**
	 * A problem.
	 * @param shape its shape
	 * @return always the same for the same shape
	 */
	public static CrewProblem of(Shape shape) {
		return MADE.computeIfAbsent(shape, CrewCases::make);
	}

	private static CrewProblem make(Shape shape) {
		Random random = new Random(shape.seed());
		List<CrewMember> people = new ArrayList<>();
		for (int i = 0; i < shape.people(); i++) {
			Set<String> skills = new HashSet<>();
			for (String skill : SKILLS) {
				if (random.nextInt(5) == 0) {
					skills.add(skill);
				}
			}
			if (random.nextInt(3) == 0) {
				skills.add("first aid");
			}
			people.add(new CrewMember("p%02d".formatted(i), skills));
		}
		List<CrewDate> dates = new ArrayList<>();
		for (int i = 0; i < shape.dates(); i++) {
			List<CrewMember> crew = people.stream().filter((one) -> random.nextInt(100) < shape.attendance()).toList();
			dates.add(new CrewDate(FIRST.plusWeeks(i), LocalTime.of(6, 30), LocalTime.of(18, 0), crew, shape.teams(),
					shape.extras() && random.nextInt(8) == 0));
		}
		List<CrewSite> sites = sites(shape, random, dates);
		List<CrewTask> tasks = new ArrayList<>();
		for (int i = 0; i < shape.tasks(); i++) {
			tasks.add(task(i, shape, random, sites, dates));
		}
		CrewRules rules = rules(shape);
		Map<String, LocalDate> before = switch (shape.past()) {
			case NONE -> Map.of();
			case CHANCE -> byChance(random, tasks, dates);
			case PLANNED -> planned(new CrewProblem(sites, tasks, dates, rules, Map.of(), shape.seed()));
		};
		return new CrewProblem(sites, tasks, dates, rules, before, shape.seed());
	}

	/** Villages of some sites each, in a county of some 50 by 40 km. */
	private static List<CrewSite> sites(Shape shape, Random random, List<CrewDate> dates) {
		List<GeoPoint> villages = new ArrayList<>();
		for (int i = 0; i < 1 + shape.sites() / 5; i++) {
			villages.add(new GeoPoint(41 + 0.36 * random.nextDouble(), -74 + 0.6 * random.nextDouble(), 100));
		}
		List<CrewSite> sites = new ArrayList<>();
		for (int i = 0; i < shape.sites(); i++) {
			GeoPoint village = villages.get(random.nextInt(villages.size()));
			GeoPoint at = new GeoPoint(village.latitude() + 0.02 * random.nextGaussian(),
					village.longitude() + 0.03 * random.nextGaussian(), 100);
			Set<LocalDate> closed = (random.nextInt(6) == 0) ? Set.of(dates.get(random.nextInt(dates.size())).day())
					: Set.of();
			sites.add(new CrewSite("s%02d".formatted(i), "Garden %d".formatted(i + 1), at, closed));
		}
		return sites;
	}

	private static CrewTask task(int i, Shape shape, Random random, List<CrewSite> sites, List<CrewDate> dates) {
		int span = 7 * shape.dates();
		LocalDate from = FIRST.plusDays(random.nextInt(span + 14) - 14L);
		DayWindow window = new DayWindow(from, from.plusDays(6 + random.nextInt(50)));
		List<HoldOff> held = new ArrayList<>();
		if (random.nextInt(4) == 0) {
			LocalDate begins = window.from().plusDays(random.nextInt((int) window.days()));
			held.add(new HoldOff(new DayWindow(begins, begins.plusDays(random.nextInt(21))), "the buds are open"));
		}
		int minutes = Math.max(15, 5 * (int) Math.round(18 * Math.exp(0.8 * random.nextGaussian())));
		int skilled = random.nextInt(10);
		Set<String> skills = (skilled < SKILLS.size() && skilled != 2) ? Set.of(SKILLS.get(skilled)) : Set.of();
		Set<String> tools = (random.nextInt(8) == 0) ? Set.of(TOOLS.get(random.nextInt(2))) : Set.of("gloves");
		LocalDate pinned = (shape.extras() && random.nextInt(20) == 0) ? dates.get(random.nextInt(dates.size())).day()
				: null;
		Set<LocalDate> notOn = (shape.extras() && random.nextInt(10) == 0)
				? Set.of(dates.get(random.nextInt(dates.size())).day()) : Set.of();
		int importance = 10 + 10 * random.nextInt(3) + (random.nextInt(5) == 0 ? 50 : 0) + random.nextInt(11);
		return new CrewTask("t%03d".formatted(i), sites.get(random.nextInt(sites.size())).id(),
				"Task %d".formatted(i + 1), window, held, Math.min(minutes, 600), skills, tools, importance, pinned,
				notOn);
	}

	private static CrewRules rules(Shape shape) {
		return new CrewRules(LocalTime.of(9, 0), 180, 3, shape.extras() ? Math.max(1, shape.dates() * 2 / 3) : 366,
				(shape.people() > 20) ? Set.of("first aid") : Set.of(),
				shape.extras() ? Map.of("chipper", 1, "spreader", 2) : Map.of(), TravelRules.USUAL, PlanCosts.USUAL);
	}

	private static Map<String, LocalDate> byChance(Random random, List<CrewTask> tasks, List<CrewDate> dates) {
		Map<String, LocalDate> before = new HashMap<>();
		for (CrewTask task : tasks) {
			List<LocalDate> days = dates.stream().map(CrewDate::day).filter(task.window()::contains).toList();
			if (random.nextInt(3) == 0 && !days.isEmpty()) {
				before.put(task.id(), days.get(random.nextInt(days.size())));
			}
		}
		return before;
	}

	/** The plan of the same group before the wishes came. */
	private static Map<String, LocalDate> planned(CrewProblem problem) {
		List<CrewTask> tasks = problem.tasks()
			.stream()
			.map((task) -> new CrewTask(task.id(), task.site(), task.title(), task.window(), task.holdOffs(),
					task.personMinutes(), task.skills(), task.tools(), task.importance(), null, Set.of()))
			.toList();
		List<CrewDate> dates = problem.dates()
			.stream()
			.map((date) -> new CrewDate(date.day(), date.sunrise(), date.sunset(), date.crew(), date.teams(), false))
			.toList();
		return SearchPlanner.byMovesAlone(1)
			.plan(new CrewProblem(problem.sites(), tasks, dates, problem.rules(), Map.of(), problem.seed()))
			.days();
	}

	/**
	 * Stands for a problem: the CRC-32 of its numbers in a fixed order.
	 * @param problem the problem
	 * @return eight hexadecimal digits
	 */
	public static String fingerprint(CrewProblem problem) {
		CRC32 sum = new CRC32();
		StringBuilder words = new StringBuilder();
		problem.sites()
			.forEach((site) -> words.append(site.id()).append(site.at()).append(new TreeSet<>(site.closed())));
		problem.dates().forEach((date) -> {
			words.append(date.day()).append(date.teams()).append(date.locked());
			date.crew().forEach((one) -> words.append(one.id()).append(new TreeSet<>(one.skills())));
		});
		problem.tasks()
			.forEach((task) -> words.append(task.id())
				.append(task.site())
				.append(task.window())
				.append(task.holdOffs())
				.append(task.personMinutes())
				.append(task.importance())
				.append(new TreeSet<>(task.skills()))
				.append(new TreeSet<>(task.tools()))
				.append(task.pinned())
				.append(new TreeSet<>(task.notOn())));
		words.append(new TreeMap<>(problem.before())).append(problem.rules().costs()).append(problem.seed());
		sum.update(words.toString().getBytes(StandardCharsets.UTF_8));
		return "%08x".formatted(sum.getValue());
	}

	/**
	 * Whether a plan keeps each pin that is possible for its task alone.
	 * @param problem the problem
	 * @param plan its plan
	 * @return whether no pinned task has been crowded out
	 */
	public static boolean pinsKept(CrewProblem problem, CrewPlan plan) {
		Set<String> crowded = new HashSet<>();
		plan.unplaced()
			.stream()
			.filter((one) -> one.cause().compareTo(Unplaced.Cause.FULL) >= 0)
			.forEach((one) -> crowded.add(one.task()));
		return problem.tasks().stream().noneMatch((task) -> task.pinned() != null && crowded.contains(task.id()));
	}

}
