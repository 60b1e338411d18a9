package org.leafward.amounts.web;

import org.leafward.amounts.light.StartingLight.Lamp;
import org.leafward.climate.core.light.LightSource;

/** In what a lamp's light was read. */
enum LampUnit {

	MICROMOLES("µmol/m²s"), LUX("lux"), FOOT_CANDLES("foot-candles");

	private final String words;

	LampUnit(String words) {
		this.words = words;
	}

	String words() {
		return this.words;
	}

	Lamp lamp(LightSource source, double level, double hours) {
		return switch (this) {
			case MICROMOLES -> new Lamp(level, hours);
			case LUX -> Lamp.ofLux(source, level, hours);
			case FOOT_CANDLES -> Lamp.ofFootCandles(source, level, hours);
		};
	}

}
