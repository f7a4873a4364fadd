// Leaks that the sanitizers are not to tell of: fontconfig keeps what it reads of variable fonts.
extern "C" const char* __lsan_default_suppressions() {
    return "leak:libfontconfig\n";
}

extern "C" const char* __lsan_default_options() {
    return "print_suppressions=0";
}
