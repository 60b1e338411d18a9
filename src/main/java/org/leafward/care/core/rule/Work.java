package org.leafward.care.core.rule;

import java.util.Locale;

/**
 * The kind of work that a rule asks for or forbids. A hold-off forbids what a do of the
 * same work asks for.
 */
public enum Work {

	/** Raking, bagging, cutting back what is dead. */
	CLEAN_UP("cleaning up"),

	/** Covers for a cold night or a hot day. */
	COVER("covering"),

	/** Dividing clumps. */
	DIVIDE("dividing"),

	/** Fertiliser, and minerals for a lack of them. */
	FEED("feeding"),

	/** Hardening off. */
	HARDEN("hardening off"),

	/** Picking and storing. */
	HARVEST("harvesting"),

	/** Care of the irrigation itself. */
	IRRIGATION("irrigation"),

	/** Washing salts down or off. */
	LEACH("washing salt out"),

	/** Lifting bulbs and tubers. */
	LIFT("lifting"),

	/** Mowing. */
	MOW("mowing"),

	/** Moving pots in, out, or to other light. */
	MOVE("moving"),

	/** Mulch laid, topped up or taken away. */
	MULCH("mulching"),

	/** Planting and transplanting outdoors. */
	PLANT("planting"),

	/** Pruning, shearing, pinching, deadheading. */
	PRUNE("pruning"),

	/** The safety of those who work. */
	SAFETY("safety"),

	/** Samples for a laboratory. */
	SAMPLE("sampling"),

	/** Looking for pests, diseases and injuries. */
	SCOUT("scouting"),

	/** Screens, wraps, guards and sprays against winter. */
	SHELTER("sheltering"),

	/** Soil tests and amendments, aeration. */
	SOIL("soil work"),

	/** Sowing, indoors, in the open, or on a lawn. */
	SOW("sowing"),

	/** Sprays and other treatments against pests, diseases and weeds. */
	TREAT("treating"),

	/** Watering. */
	WATER("watering");

	private final String words;

	Work(String words) {
		this.words = words;
	}

	/**
	 * The name used in rule packs and the API.
	 * @return lower case with hyphens
	 */
	public String code() {
		return name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

	/**
	 * The work for readers.
	 * @return for example "pruning"
	 */
	public String words() {
		return this.words;
	}

}
