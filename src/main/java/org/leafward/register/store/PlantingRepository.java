package org.leafward.register.store;

import jakarta.persistence.QueryHint;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.jpa.repository.QueryHints;

/** Rows of plantings. */
public interface PlantingRepository extends JpaRepository<PlantingEntity, UUID> {

	@Query("select p from PlantingEntity p where p.site = :site order by p.label, p.id")
	List<PlantingEntity> ofSite(UUID site);

	@QueryHints(@QueryHint(name = "org.hibernate.readOnly", value = "true"))
	@Query("select p from PlantingEntity p where p.site in :sites order by p.label, p.id")
	List<PlantingEntity> ofSites(Collection<UUID> sites);

	long countBySite(UUID site);

}
