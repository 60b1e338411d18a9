package org.leafward.register.store;

import jakarta.persistence.QueryHint;
import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.jpa.repository.QueryHints;

/** Rows of plantings. */
public interface PlantingRepository extends JpaRepository<PlantingEntity, UUID> {

	@Query("select p from PlantingEntity p where p.site = :site order by p.label, p.id")
	List<PlantingEntity> ofSite(UUID site);

	/** In SQL with an array: lists of parameters are translated anew each time. */
	@QueryHints(@QueryHint(name = "org.hibernate.readOnly", value = "true"))
	@Query(nativeQuery = true, value = "select * from register.planting where site = any(:sites) order by label, id")
	List<PlantingEntity> ofSites(UUID[] sites);

	/**
	 * Of one person, or of everybody but the server; by name of the site, then label.
	 * Patterns are those of {@code ilike}.
	 */
	@QueryHints(@QueryHint(name = "org.hibernate.readOnly", value = "true"))
	@Query(nativeQuery = true, value = """
			select p.* from register.planting p join register.site s on s.id = p.site
			where (case when :everybody then s.owner <> :person else s.owner = :person end)
				and (p.label ilike :pattern or s.name ilike :pattern or p.species = any(:species))
			order by s.name, s.id, p.label, p.id limit :size offset :skip
			""")
	List<PlantingEntity> search(boolean everybody, UUID person, String pattern, String[] species, int size, long skip);

	@Query("select p from PlantingEntity p where p.bed = :bed order by p.label, p.id")
	List<PlantingEntity> inBed(UUID bed);

	@Modifying(flushAutomatically = true, clearAutomatically = true)
	@Query("update PlantingEntity p set p.bed = null where p.bed = :bed")
	void leaveBed(UUID bed);

	long countBySite(UUID site);

}
