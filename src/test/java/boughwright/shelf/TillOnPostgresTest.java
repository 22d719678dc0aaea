package boughwright.shelf;

import boughwright.storage.Databases;

/** All of it again on PostgreSQL. */
class TillOnPostgresTest extends TillTest {

    @Override
    Databases databases() {
        return Databases.POSTGRESQL;
    }
}
