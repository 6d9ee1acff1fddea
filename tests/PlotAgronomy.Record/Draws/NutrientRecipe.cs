namespace PlotAgronomy.DrawnPlans;

/// <summary>A recommendation system with readings it accepts and kinds it has rows for.</summary>
internal sealed record NutrientRecipe(
    string System, string Unit, string[] Phosphorus, double PhosphorusHigh,
    string[] Potassium, double PotassiumHigh, KindWord[] Kinds)
{
    private const string Ppm = "ppm";
    private const string Pounds = "lb/ac";
    private const string Bray = "Bray P-1";
    private const string Acetate = "ammonium acetate";
    private const string Third = "Mehlich-3";
    private const string Tons = "ton/ac";
    private const string Bushels = "bu/ac";

    private static readonly KindWord[] Legumes = [.. KindWords.Legumes.Intersect(KindWords.Sowable)];
    private static readonly KindWord[] Rows = [.. KindWords.Cereals, .. Legumes];
    private static readonly KindWord[] Corns =
        [.. KindWords.Grasses.Where(k => k.Name is "Corn" or "Grain sorghum" or "Pearl millet")];
    private static readonly KindWord[] CornsAndRows = [.. Corns, .. Rows];

    private static readonly KindWord[] HayGrasses =
        [.. KindWords.Grasses.Where(k => k.Name is "Annual ryegrass" or "Orchardgrass" or "Timothy" or "Switchgrass")];

    internal static readonly NutrientRecipe[] All =
    [
        new("NC", "North Carolina index", [Third], 90, [Third], 90, KindWords.Sowable),
        new("SC", Pounds, ["Mehlich-1"], 80, ["Mehlich-1"], 220, Rows),
        new("TS-2020", Ppm, [Third], 60, [Third], 190, KindWords.Sowable),
        new("TS-1995", Ppm, [Bray], 50, [Acetate], 190, CornsAndRows),
        new("MO", Pounds, [Bray], 70, [Acetate], 320, CornsAndRows),
        new("IL", Pounds, [Bray, Third], 80, [Acetate, Third], 400, Rows),
        new("OK", "Oklahoma index", [Third], 75, [Third], 280, KindWords.Cereals),
        new("KS", Ppm, [Bray, Third], 30, [Acetate, Third], 160, CornsAndRows),
        new("SD", Ppm, [Bray, "Olsen"], 28, [Acetate], 190, CornsAndRows),
        new("ND-2017", Ppm, [Bray, "Olsen"], 28, [Acetate], 190, CornsAndRows),
        new("IA-2013", Ppm, [Bray, "Mehlich-3 colorimetric", "Mehlich-3 ICP"], 45, [Acetate, Third], 260, CornsAndRows),
        new("NE", Ppm, [Bray, Third, "Olsen"], 40, [Acetate, Third], 200, CornsAndRows),
        new("NE-OLD", Ppm, [Bray], 40, [Acetate, Third], 200, Corns),
        new("MT", Ppm, ["Olsen"], 24, [Acetate], 240, Legumes),
        new("NI", "mg/dm3", ["Olsen"], 50, [Acetate], 240, HayGrasses),
    ];

    /// <summary>The unit in which the row a kind is taken as counts its yield; null where two rows differ.</summary>
    internal string? YieldUnitOf(KindWord kind) => System switch
    {
        "NC" or "NI" or "MT" => Tons,
        "IL" or "KS" or "IA-2013" or "NE-OLD" => Bushels,
        "SC" or "OK" => IsSeedCrop(kind) || kind.Name == "Annual ryegrass" ? Bushels : Tons,
        "TS-2020" => IsSeedCrop(kind) || IsBean(kind) || kind.Name is "Corn" or "Grain sorghum" ? Bushels : Tons,
        "SD" or "ND-2017" when KindWords.Legumes.Contains(kind) && !IsBean(kind) => kind.Name == "Alfalfa" ? Tons : null,
        _ => IsSeedCrop(kind) || IsBean(kind) || KindWords.WarmGrains.Contains(kind) ? Bushels : Tons,
    };

    private static bool IsBean(KindWord kind) => KindWords.Beans.Contains(kind);

    private static bool IsSeedCrop(KindWord kind) =>
        KindWords.Cereals.Contains(kind) || KindWords.Brassicas.Contains(kind)
            || KindWords.RootCrops.Contains(kind) || KindWords.SeedForbs.Contains(kind);
}
