package org.leafward.care.web;

import java.util.Locale;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.MarkerKind;

/** Names of season markers for readers. */
final class MarkerNames {

	private MarkerNames() {
	}

	/** Whether a marker is worth a line in the year strip, which has room for few. */
	static boolean inStrip(MarkerKey key) {
		return !key.kind().needsGoal() && (key.threshold() == null || "32F".equals(key.threshold().code()));
	}

	static String brief(MarkerKey key) {
		return switch (key.kind()) {
			case LAST_SPRING_FREEZE -> "last freeze";
			case FIRST_FALL_FREEZE -> "first freeze";
			case NIGHTS_WARM_TO -> "warm nights";
			case NIGHTS_COOL_TO -> "cool nights";
			case GROUND_FREEZE -> "ground freezes";
			case GROUND_THAW -> "ground thaws";
			case DEGREE_DAYS -> "degree-days";
			case SOIL_WARMS_TO -> "warm soil";
			case SOIL_COOLS_TO -> "cool soil";
			case DAYS_COOL_TO -> "cool days";
		};
	}

	static String full(MarkerKey key) {
		MarkerKind kind = key.kind();
		String name = kind.code().substring(0, 1).toUpperCase(Locale.ROOT) + kind.code().substring(1).replace('-', ' ');
		boolean freeze = kind == MarkerKind.LAST_SPRING_FREEZE || kind == MarkerKind.FIRST_FALL_FREEZE;
		String joint = kind.needsGoal() ? " above " : freeze ? " at " : " ";
		return name + ((key.threshold() != null) ? joint + key.threshold().words() : "")
				+ ((key.goal() != null) ? ", " + key.goal().words() : "");
	}

}
