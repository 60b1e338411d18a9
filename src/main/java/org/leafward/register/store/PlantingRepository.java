package org.leafward.register.store;

import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** Rows of plantings. */
public interface PlantingRepository extends JpaRepository<PlantingEntity, UUID> {

	@Query("select p from PlantingEntity p where p.site = :site order by p.label, p.id")
	List<PlantingEntity> ofSite(UUID site);

	long countBySite(UUID site);

}
