namespace PlotAgronomy.DrawnPlans;

/// <summary>A kind as a plan names it, with a usual rate alone in lb/ac.</summary>
internal sealed record KindWord(string Name, double FullRate);

/// <summary>Every kind of the catalog by its short name.</summary>
internal static class KindWords
{
    internal static readonly KindWord[] Legumes =
    [
        new("Ladino clover", 3), new("White Dutch clover", 3), new("Alsike clover", 5), new("Medium red clover", 8),
        new("Mammoth red clover", 10), new("Kura clover", 10), new("Alfalfa", 15), new("Birdsfoot trefoil", 5),
        new("Sweetclover", 10), new("Crimson clover", 18), new("Berseem clover", 15), new("Arrowleaf clover", 8),
        new("Balansa clover", 5), new("Subterranean clover", 10), new("Persian clover", 6), new("Korean lespedeza", 15),
        new("Striate lespedeza", 20), new("Austrian winter pea", 50), new("Field pea", 90), new("Hairy vetch", 25),
        new("Common vetch", 25), new("Blue lupin", 90), new("Cowpea", 40), new("Lablab", 20), new("Forage soybean", 60),
        new("Grain soybean", 60), new("Sunn hemp", 20), new("American jointvetch", 10), new("Alyceclover", 15),
    ];

    internal static readonly KindWord[] Cereals =
    [
        new("Spring oats", 80), new("Winter oats", 80), new("Cereal rye", 80), new("Winter wheat", 90), new("Triticale", 90),
        new("Barley", 55),
    ];

    internal static readonly KindWord[] Grasses =
    [
        new("Annual ryegrass", 20), new("Sorghum-sudangrass", 30), new("Grain sorghum", 15), new("Egyptian wheat", 15),
        new("Pearl millet", 20), new("Browntop millet", 20), new("Proso millet", 20), new("Foxtail millet", 20),
        new("Japanese millet", 20), new("Corn", 15), new("Switchgrass", 7), new("Big bluestem", 10), new("Indiangrass", 10),
        new("Eastern gamagrass", 8), new("Orchardgrass", 10), new("Timothy", 8),
    ];

    internal static readonly KindWord[] Forbs =
    [
        new("Sunflower", 15), new("Buckwheat", 50), new("Sesame", 6), new("Chicory", 4), new("Small burnet", 20),
        new("Plantain", 6),
    ];

    internal static readonly KindWord[] Brassicas =
    [
        new("Forage rape", 4), new("Kale", 4), new("Forage turnip", 2), new("Purple-top turnip", 2), new("Swede", 2),
        new("Daikon radish", 8), new("Forage radish", 8), new("White mustard", 10), new("Brown mustard", 8),
    ];

    internal static readonly KindWord[] RootCrops =
    [
        new("Sugar beet", 6),
    ];

    /// <summary>Grain of any kind is counted in bushels, hay in tons.</summary>
    internal static readonly KindWord[] WarmGrains =
        [.. Grasses.Where(k => k.Name is "Corn" || k.Name.Contains("orghum", StringComparison.Ordinal)
            || k.Name.Contains("millet", StringComparison.Ordinal))];

    internal static readonly KindWord[] Beans =
        [.. Legumes.Where(k => k.Name is "Cowpea" or "Lablab" or "Forage soybean" or "Grain soybean")];

    internal static readonly KindWord[] SeedForbs = [.. Forbs.Where(k => k.Name is "Sunflower" or "Buckwheat" or "Sesame")];

    internal static readonly KindWord[] All = [.. Legumes, .. Cereals, .. Grasses, .. Forbs, .. Brassicas, .. RootCrops];

    /// <summary>Kinds a plan can sow: for the others no seed count is known.</summary>
    internal static readonly KindWord[] Sowable = [.. All.Where(k => k.Name is not ("Egyptian wheat" or "American jointvetch"))];
}
