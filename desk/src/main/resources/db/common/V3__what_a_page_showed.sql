-- A projection: what a page showed, kept with what it followed from, so that it need not be reckoned again while that
-- stands. It can be thrown away at any time.
create table shown (
    name    text not null primary key,
    follows text not null,
    content text not null
);
