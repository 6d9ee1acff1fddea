namespace PlotAgronomy.DrawnPlans;

/// <summary>The words of a plan's report and plot.</summary>
internal static class ReportWords
{
    internal static readonly string[] Buffers =
    [
        "SMP", "Sikora", "Sikora-2", "Mehlich", "modified Mehlich", "Adams-Evans", "modified Adams-Evans", "Moore-Sikora",
        "Woodruff", "new Woodruff",
    ];

    internal static readonly string[] Extractants =
    [
        "Mehlich-1", "Mehlich-3", "Mehlich-3 colorimetric", "Mehlich-3 ICP", "Bray P-1", "Olsen", "ammonium acetate", "Morgan",
        "modified Morgan", "Lancaster", "DTPA", "hot water", "not stated",
    ];

    /// <summary>What may be printed besides phosphorus and potassium, with usual extractants, unit and highest value.</summary>
    internal static readonly (string Analyte, string[] Extractants, string Unit, double High)[] OtherReadings =
    [
        ("Ca", ["Mehlich-3", "ammonium acetate"], "ppm", 2400), ("Mg", ["Mehlich-3", "ammonium acetate"], "ppm", 260),
        ("Na", ["ammonium acetate"], "ppm", 90), ("S", ["Mehlich-3", "Morgan"], "ppm", 30),
        ("S", ["Mehlich-3"], "North Carolina index", 70), ("B", ["hot water", "Mehlich-3"], "ppm", 2),
        ("Zn", ["DTPA", "Mehlich-3"], "ppm", 5), ("Zn", ["Mehlich-3"], "North Carolina index", 90),
        ("Mn", ["DTPA", "Mehlich-3"], "ppm", 60), ("Mn", ["Mehlich-3"], "North Carolina index", 90),
        ("Cu", ["DTPA", "Mehlich-3"], "ppm", 3), ("Fe", ["DTPA", "Mehlich-3"], "ppm", 90),
        ("Al", ["modified Morgan"], "ppm", 200), ("Ca", ["ammonium acetate"], "% saturation", 80),
        ("Mg", ["ammonium acetate"], "meq/100 g", 3), ("K", ["ammonium acetate"], "meq/100 cm3", 0.6),
        ("K", ["Lancaster"], "lb/ac", 400), ("P", ["Mehlich-3"], "Delaware index", 120),
        ("P2O5", ["not stated", "Lancaster"], "kg/ha", 180), ("K2O", ["not stated", "Mehlich-1"], "kg/ha", 300),
    ];

    internal static readonly string[] PrintedBases =
    [
        "adams-evans-ag-lime", "ag-ground-90", "ag-lime-nv-90", "cce-100-fine", "georgia-ag-lime", "ground-limestone",
        "illinois-typical-1-year", "illinois-typical-4-years", "iowa-ecce", "kansas-ecc-100", "kentucky-rnv-100",
        "minnesota-enp", "mississippi-rnv-100", "missouri-enm", "nebraska-ecc-60", "new-york-env-100",
        "north-carolina-standard", "ohio-enp", "oklahoma-ecce-100", "ontario-ai-75", "oregon-score-100", "pure-carbonate",
        "wisconsin-60-69", "wisconsin-80-89",
    ];

    internal static readonly string[] Institutions =
        ["Oregon", "North Carolina", "Pennsylvania", "Iowa", "Wisconsin", "Ohio", "Missouri", "New York"];

    internal static readonly string[] Textures =
    [
        "sand", "loamy sand", "sandy loam", "loam", "silt loam", "silt", "sandy clay loam", "clay loam", "silty clay loam",
        "sandy clay", "silty clay", "clay",
    ];

    internal static readonly string[] Drainages =
    [
        "very poorly drained", "poorly drained", "somewhat poorly drained", "moderately well drained", "well drained",
        "somewhat excessively drained", "excessively drained",
    ];

    internal static readonly string[] CreditsOfEarlierLegumes =
    [
        "wisconsin-alfalfa", "minnesota-alfalfa", "kansas-alfalfa", "idaho-alfalfa", "tennessee-cover", "soybean",
        "red-clover-plowdown",
    ];

    internal static readonly string[] CreditsOfStands = ["tennessee-clover-in-grass"];
}
