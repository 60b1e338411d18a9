package org.leafward.workdays.core.effort;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.leafward.care.core.rule.Work;
import org.leafward.workdays.Skill;

/**
 * What a task asks of a group. The figures are common practice of volunteers who are not
 * in a hurry, without a source; a coordinator who knows better says so on the plan.
 *
 * @param minutes person-minutes, 1 to 2,400
 * @param skills what those who do it need
 * @param tools what they bring
 */
public record Effort(int minutes, Set<Skill> skills, List<String> tools) {

	/** A trunk from which on a branch may want a power saw, mm. */
	private static final double SAW_TRUNK = 150;

	private static final int MOST = 2400;

	/** Plants that are alike go faster after the first. */
	private static final int FEW = 20;

	private static final int FASTER = 8;

	public Effort {
		skills = Set.copyOf(skills);
		tools = List.copyOf(tools);
	}

	/**
	 * The effort of a task.
	 * @param work the kind of work; null when it isn't known
	 * @param count number of plants, 1 or more; 1 for a site as a whole
	 * @param squareMetres area of the planting; null when nobody measured
	 * @param trunk thickness of one trunk, mm; null when nobody measured
	 * @return the effort
	 */
	public static Effort of(@Nullable Work work, int count, @Nullable Double squareMetres, @Nullable Double trunk) {
		Kind kind = (work != null) ? Kind.of(work) : Kind.OTHER;
		double units = Math.min(count, FEW) + Math.max(0, count - FEW) / (double) FASTER;
		double minutes = kind.start + ((kind.perSquareMetre > 0 && squareMetres != null)
				? kind.perSquareMetre * squareMetres : kind.perPlant * units);
		Set<Skill> skills = new TreeSet<>();
		if (kind == Kind.TREAT) {
			skills.add(Skill.PESTICIDE);
		}
		List<String> tools = kind.tools;
		if (kind == Kind.PRUNE && trunk != null && trunk >= SAW_TRUNK) {
			skills.add(Skill.SAW);
			tools = List.of("loppers", "pole saw", "hard hats");
			minutes += 20 * units;
		}
		return new Effort((int) Math.max(5, Math.min(MOST, Math.round(minutes / 5) * 5)), skills, tools);
	}

	/** Minutes to begin with, for each plant, and for each square metre. */
	private enum Kind {

		CLEAN_UP(10, 6, 4, "rakes", "tarps", "barrow"), COVER(5, 4, 1, "row cover", "pegs"),
		DIVIDE(10, 15, 0, "spades", "garden forks"), FEED(5, 3, 1, "buckets", "scale"), HARVEST(5, 6, 4, "crates"),
		IRRIGATION(30, 0, 0, "hose fittings", "pliers"), WASH(10, 5, 3, "hoses"),
		LIFT(10, 3, 0, "garden forks", "crates", "labels"), MOW(10, 2, 0.3, "mower", "ear protection"),
		MOVE(5, 6, 0, "hand truck"), MULCH(15, 8, 6, "barrows", "forks", "rakes"),
		PLANT(10, 12, 0, "spades", "buckets", "watering cans"), PRUNE(10, 12, 5, "hand shears", "loppers"),
		SAMPLE(10, 5, 0, "bags", "labels", "trowel"), SCOUT(5, 4, 0, "hand lens", "notebook"),
		SHELTER(10, 12, 4, "stakes", "burlap", "mallet"), SOIL(15, 4, 8, "spades", "buckets"),
		SOW(10, 3, 3, "rakes", "seed"), TREAT(20, 6, 2, "sprayer", "gloves and goggles", "the label"),
		WATER(10, 5, 3, "hoses", "watering cans"), OTHER(15, 5, 0, "gloves");

		private final int start;

		private final double perPlant;

		private final double perSquareMetre;

		private final List<String> tools;

		Kind(int start, double perPlant, double perSquareMetre, String... tools) {
			this.start = start;
			this.perPlant = perPlant;
			this.perSquareMetre = perSquareMetre;
			this.tools = List.of(tools);
		}

		private static Kind of(Work work) {
			return switch (work) {
				case CLEAN_UP -> CLEAN_UP;
				case COVER -> COVER;
				case DIVIDE -> DIVIDE;
				case FEED -> FEED;
				case HARVEST -> HARVEST;
				case IRRIGATION -> IRRIGATION;
				case LEACH -> WASH;
				case LIFT -> LIFT;
				case MOW -> MOW;
				case MOVE, HARDEN -> MOVE;
				case MULCH -> MULCH;
				case PLANT -> PLANT;
				case PRUNE -> PRUNE;
				case SAMPLE -> SAMPLE;
				case SCOUT -> SCOUT;
				case SHELTER -> SHELTER;
				case SOIL -> SOIL;
				case SOW -> SOW;
				case TREAT -> TREAT;
				case WATER -> WATER;
				default -> OTHER;
			};
		}

	}

}
