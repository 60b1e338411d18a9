package org.leafward.register.store;

import jakarta.persistence.QueryHint;
import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
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

	long countBySite(UUID site);

}
