package org.leafward.regions;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.measure.GeoPoint;
import org.leafward.regions.core.Position;
import org.springframework.core.env.Environment;
import org.springframework.core.env.Profiles;
import org.springframework.stereotype.Component;

/** The counties that the server is for, as they were when it started. */
@Component
public class Regions {

	private final List<County> counties;

	private final List<Town> towns;

	/**
	 * Reads the files of {@code config/regions}; invented places count in the demo only.
	 * @param files finds the files
	 * @param reader reads them
	 * @param environment tells whether this is the demo
	 * @throws BrokenKnowledge with every problem of every file
	 */
	public Regions(KnowledgeFiles files, KnowledgeReader reader, Environment environment) {
		RegionReader read = new RegionReader(reader, environment.acceptsProfiles(Profiles.of("demo")))
			.read(files.of("regions", "geojson"));
		this.counties = read.counties();
		this.towns = read.towns();
	}

	/**
	 * All counties.
	 * @return by name; empty when the operator gave none
	 */
	public List<County> counties() {
		return this.counties;
	}

	/**
	 * A county by its code.
	 * @param code as {@link County#code()} gives it
	 * @return empty when there is none
	 */
	public Optional<County> find(String code) {
		return this.counties.stream().filter((one) -> one.code().equals(code)).findFirst();
	}

	/**
	 * The county that a point lies in.
	 * @param point the point; its height doesn't matter
	 * @return empty outside of all; where counties overlap, the first by name
	 */
	public Optional<County> countyAt(GeoPoint point) {
		Position at = new Position(point.longitude(), point.latitude());
		return this.counties.stream().filter((one) -> one.area().contains(at)).findFirst();
	}

	/**
	 * Places that stand for a county: its middle first, then towns of it.
	 * @param county the county
	 * @param towns how many towns at most
	 * @return at the county's typical height
	 */
	public List<GeoPoint> placesOf(County county, int towns) {
		return Stream
			.concat(Stream.of(county.somewhere()), this.towns.stream()
				.filter((one) -> county.area().contains(one.at()))
				.limit(towns)
				.map((one) -> new GeoPoint(one.at().latitude(), one.at().longitude(), county.elevationMetres())))
			.toList();
	}

	/**
	 * A map of all counties.
	 * @param width px, {@value RegionMap#LEAST} to {@value RegionMap#MOST}
	 * @return empty without counties
	 */
	public Optional<RegionMap> map(int width) {
		return this.counties.isEmpty() ? Optional.empty()
				: Optional.of(new RegionMap(this.counties, this.towns, width, Optional.empty()));
	}

}
