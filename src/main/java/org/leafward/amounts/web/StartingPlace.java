package org.leafward.amounts.web;

import org.leafward.amounts.light.Aspect;
import org.leafward.amounts.light.SiteLight;
import org.leafward.amounts.light.StartingLight;

/** Where a plant may stand now, as the form asks. */
enum StartingPlace {

	SOUTH_WINDOW("on a south windowsill", new StartingLight.Windowsill(Aspect.SOUTH)),

	EAST_WINDOW("on an east windowsill", new StartingLight.Windowsill(Aspect.EAST)),

	WEST_WINDOW("on a west windowsill", new StartingLight.Windowsill(Aspect.WEST)),

	NORTH_WINDOW("on a north windowsill", new StartingLight.Windowsill(Aspect.NORTH)),

	/** Its light is read from the fields beside it. */
	LAMP("under a lamp", new StartingLight.Unknown()),

	GLASSHOUSE("in a glasshouse or cold frame", StartingLight.UnderGlass.GLASSHOUSE),

	SHADE("outdoors in the shade", new StartingLight.Outdoors(SiteLight.SHADE)),

	UNKNOWN("I can’t tell", new StartingLight.Unknown());

	private final String words;

	private final StartingLight light;

	StartingPlace(String words, StartingLight light) {
		this.words = words;
		this.light = light;
	}

	String words() {
		return this.words;
	}

	StartingLight light() {
		return this.light;
	}

}
