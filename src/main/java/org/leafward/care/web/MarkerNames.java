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
		return !key.kind().needsGoal() && !key.kind().needsDaylight() && key.kind() != MarkerKind.DE_ICING_END
				&& (key.threshold() == null || "32F".equals(key.threshold().code()));
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
			case UPPER_SOIL_WARMS_TO -> "warm upper soil";
			case UPPER_SOIL_COOLS_TO -> "cool upper soil";
			case DE_ICING_END -> "end of de-icing";
			case DAYLIGHT_LENGTHENS_TO -> "long days";
			case DAYLIGHT_SHORTENS_TO -> "short days";
		};
	}

	static String full(MarkerKey key) {
		MarkerKind kind = key.kind();
		String code = (kind == MarkerKind.DE_ICING_END) ? "end of de\u2011icing" : kind.code().replace('-', ' ');
		String name = code.substring(0, 1).toUpperCase(Locale.ROOT) + code.substring(1);
		boolean freeze = kind == MarkerKind.LAST_SPRING_FREEZE || kind == MarkerKind.FIRST_FALL_FREEZE;
		String joint = kind.needsGoal() ? " above " : freeze ? " at " : " ";
		return name + ((key.threshold() != null) ? joint + key.threshold().words() : "")
				+ ((key.goal() != null) ? ", " + key.goal().words() : "")
				+ ((key.daylight() != null) ? " " + key.daylight().words() : "");
	}

}
