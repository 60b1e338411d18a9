package org.leafward.counties.core;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.leafward.care.CareTask;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.care.TaskText;
import org.leafward.measure.DayWindow;

/**
 * Tasks of several species that say the same on the same days, as one. A county's
 * calendar would say "water" thirty times on one day otherwise.
 */
public final class SharedTasks {

	private SharedTasks() {
	}

	/**
	 * What several plants share.
	 *
	 * @param id identifier, the same as long as one of the plants stays by which it was
	 * shown before
	 * @param members one or more tasks that differ in their plants only, by species
	 */
	public record Shared(UUID id, List<Grown> members) {

		public Shared {
			members = List.copyOf(members);
		}

		/**
		 * The plants.
		 * @return English names by code, each once
		 */
		public Map<String, String> plants() {
			Map<String, String> plants = new TreeMap<>();
			this.members.forEach((one) -> plants.put(one.code(), one.name()));
			return plants;
		}

	}

	private record Turn(String rule, int season, int occurrence) {

		static final Comparator<Turn> ORDER = Comparator.comparing(Turn::rule)
			.thenComparing(Turn::season)
			.thenComparing(Turn::occurrence);

	}

	private record Looks(Turn turn, TaskKind kind, DayWindow window, TaskText text, TaskState state,
			@Nullable String because) {

		/** Total, so that any order of the tasks gives the same identifiers. */
		static final Comparator<Looks> ORDER = Comparator.comparing(Looks::turn, Turn.ORDER)
			.thenComparing((one) -> one.window().from())
			.thenComparing((one) -> one.window().to())
			.thenComparing(Looks::state)
			.thenComparing(Looks::kind)
			.thenComparing((one) -> one.text().toString())
			.thenComparing((one) -> String.valueOf(one.because()));

		static Looks of(CareTask task) {
			return new Looks(new Turn(task.rule(), task.season(), task.occurrence()), task.kind(), task.window(),
					task.text(), task.state(), task.withdrawnBecause());
		}

	}

	/**
	 * Puts tasks together. An identifier hangs on the county, the turn of the rule and
	 * one of the plants. Which one is the first by its code, unless another one was shown
	 * before: so an entry stays itself when plants join or leave it.
	 * @param county code of the county
	 * @param tasks in any order
	 * @param shown whether an identifier was in the document before
	 * @return each task in one of them, by rule, season, occurrence and days
	 */
	public static List<Shared> of(String county, Collection<Grown> tasks, Predicate<UUID> shown) {
		Map<Looks, List<Grown>> groups = new TreeMap<>(Looks.ORDER);
		tasks.stream()
			.sorted(Comparator.comparing(Grown::code).thenComparing((one) -> one.task().id().value()))
			.forEach((one) -> groups.computeIfAbsent(Looks.of(one.task()), (looks) -> new ArrayList<>()).add(one));
		Set<UUID> taken = new HashSet<>();
		Map<Looks, UUID> ids = new HashMap<>();
		groups.forEach((looks, members) -> members.stream()
			.map((one) -> id(county, looks.turn(), one.code(), 1))
			.filter((id) -> shown.test(id) && !taken.contains(id))
			.findFirst()
			.ifPresent((id) -> {
				taken.add(id);
				ids.put(looks, id);
			}));
		groups.forEach((looks, members) -> {
			if (!ids.containsKey(looks)) {
				ids.put(looks, free(county, looks.turn(), members, taken));
			}
		});
		return groups.entrySet()
			.stream()
			.map((one) -> new Shared(Objects.requireNonNull(ids.get(one.getKey())), one.getValue()))
			.toList();
	}

	/** Two plantings of a species may be told different things in one turn. */
	private static UUID free(String county, Turn turn, List<Grown> members, Set<UUID> taken) {
		for (int round = 1;; round++) {
			for (Grown one : members) {
				UUID id = id(county, turn, one.code(), round);
				if (taken.add(id)) {
					return id;
				}
			}
		}
	}

	/** Never change the shape of the name, or all entries become new ones. */
	private static UUID id(String county, Turn turn, String code, int round) {
		String name = "county|" + county + "|" + turn.rule() + "|" + turn.season() + "|" + turn.occurrence() + "|"
				+ code + ((round > 1) ? "|" + round : "");
		return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
	}

}
