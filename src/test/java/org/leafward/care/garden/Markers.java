package org.leafward.care.garden;

import org.leafward.climate.MarkerKey;
import org.leafward.climate.MarkerKind;
import org.leafward.climate.TemperatureThreshold;

/** Keys of markers by their code. */
final class Markers {

	private Markers() {
	}

	/**
	 * A key.
	 * @param code kind, threshold if it has one, p and probability
	 * @return for example "last-spring-freeze 32F p50"
	 */
	static MarkerKey key(String code) {
		String[] parts = code.split(" ");
		for (MarkerKind kind : MarkerKind.values()) {
			if (kind.code().equals(parts[0])) {
				return new MarkerKey(kind, (parts.length > 2) ? TemperatureThreshold.parse(parts[1]) : null,
						Integer.parseInt(parts[parts.length - 1].substring(1)));
			}
		}
		throw new AssertionError("no marker " + code);
	}

}
