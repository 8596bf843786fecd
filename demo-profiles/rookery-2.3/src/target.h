/* Rookery - the board and the build target must be of one kind. */
#if defined(ROOKERY_TARGET_FULMAR_M4) && NEST_BOARD != PERCH_FULMAR_M4
#error "target fulmar_m4 is for board PERCH_FULMAR_M4"
#endif
#if defined(ROOKERY_TARGET_PETREL81) && NEST_BOARD != PERCH_PETREL_81
#error "target petrel81 is for board PERCH_PETREL_81"
#endif
