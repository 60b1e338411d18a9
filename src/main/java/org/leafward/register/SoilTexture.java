package org.leafward.register;

/** Soil texture by feel, coarse to fine. */
public enum SoilTexture {

	SAND("sand"), SANDY_LOAM("sandy loam"), LOAM("loam"), SILT_LOAM("silt loam"), CLAY_LOAM("clay loam"), CLAY("clay");

	private final String words;

	SoilTexture(String words) {
		this.words = words;
	}

	public String words() {
		return this.words;
	}

}
