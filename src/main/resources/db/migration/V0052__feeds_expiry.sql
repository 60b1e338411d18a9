-- A calendar that no program fetched for 18 months ends. Its address then answers like a revoked one, in other words.
alter table feeds.feed add column expired boolean not null default false;

create index feed_last_use on feeds.feed ((coalesce(last_fetched_at, created_at))) where revoked_at is null;
