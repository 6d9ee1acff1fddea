namespace PlotAgronomy.DrawnPlans;

/// <summary>A fertilizer that may be on offer.</summary>
internal sealed record FertilizerWord(
    string Name, string Analysis, string? Substance = null,
    string? Sulfur = null, string? Magnesium = null, string? Boron = null);

/// <summary>What may be on offer, and the words of its labels.</summary>
internal static class OfferWords
{
    internal static readonly FertilizerWord[] Fertilizers =
    [
        new("complete 19-19-19", "19-19-19"), new("complete 13-13-13", "13-13-13", "mixture"),
        new("10-10-10", "10-10-10", "mixture", "4 %"), new("6-24-24", "6-24-24"), new("10-20-20", "10-20-20"),
        new("5-10-15 with boron", "5-10-15", "mixture", null, null, "0.5 %"), new("9-23-30", "9-23-30"),
        new("0-20-20", "0-20-20"), new("0-10-30 with magnesium", "0-10-30", "mixture", "6 %", "3 %"),
        new("urea", "46-0-0", "urea"), new("ammonium nitrate", "34-0-0", "ammonium nitrate"),
        new("calcium ammonium nitrate", "27-0-0", "calcium ammonium nitrate"),
        new("ammonium sulfate", "21-0-0", "ammonium sulfate", "24 %"), new("calcium nitrate", "15.5-0-0", "calcium nitrate"),
        new("potassium nitrate", "13-0-44", "potassium nitrate"),
        new("liquid nitrogen", "28-0-0", "urea ammonium nitrate solution"),
        new("thiosulfate", "12-0-0", "ammonium thiosulfate", "26 %"),
        new("monoammonium phosphate", "11-52-0", "monoammonium phosphate"),
        new("diammonium phosphate", "18-46-0", "diammonium phosphate"),
        new("polyphosphate", "10-34-0", "ammonium polyphosphate"),
        new("single superphosphate", "0-20-0", "single superphosphate", "12 %"),
        new("triple superphosphate", "0-46-0", "triple superphosphate"), new("rock phosphate", "0-3-0", "phosphate rock"),
        new("muriate of potash", "0-0-60", "potassium chloride"),
        new("sulfate of potash", "0-0-50", "potassium sulfate", "17 %"),
        new("langbeinite", "0-0-22", "potassium magnesium sulfate", "22 %", "11 %"),
        new("monopotassium phosphate", "0-52-34", "monopotassium phosphate"), new("gypsum", "0-0-0", "gypsum", "18 %"),
        new("sulfur pastilles", "0-0-0", "elemental sulfur", "90 %"), new("borax", "0-0-0", "borate", null, null, "11 %"),
        new("magnesian lime", "0-0-0", "lime", null, "10 %"), new("wood ash", "0-1-3", "wood ash"),
    ];

    /// <summary>The materials a store has first.</summary>
    internal static readonly FertilizerWord[] Usual =
        [.. Fertilizers.Where(f => f.Analysis is "46-0-0" or "0-46-0" or "0-0-60" or "19-19-19" or "18-46-0" or "10-20-20")];

    internal static readonly (string Form, double LowCce, double HighCce)[] Limes =
    [
        ("ground limestone", 75, 105), ("ground limestone", 80, 100), ("pelletized", 80, 100), ("suspension", 85, 100),
        ("hydrated", 115, 135), ("quicklime", 150, 175), ("marl", 50, 90), ("shells", 75, 95), ("wood ash", 25, 60),
        ("slag", 50, 80), ("sugar beet lime", 60, 85), ("gypsum", 0, 2), ("other", 60, 100),
    ];

    internal static readonly (string Index, double Low, double High)[] LabelFigures =
    [
        ("cce", 75, 105), ("field-efficiency", 40, 95), ("illinois-env-1-year", 30, 90), ("illinois-env-4-years", 40, 95),
        ("iowa-ecce", 900, 1900), ("kansas-ecc", 40, 95), ("kentucky-rnv", 50, 95), ("michigan-ecc", 50, 95),
        ("minnesota-enp", 900, 1900), ("mississippi-rnv", 50, 95), ("missouri-enm", 300, 750), ("nebraska-ecc", 40, 90),
        ("new-york-env", 50, 95), ("north-carolina-standard", 70, 105), ("ohio-enp", 1000, 1900), ("oklahoma-ecce", 50, 95),
        ("ontario-ai", 50, 95), ("oregon-score", 50, 100), ("texas-ecce", 50, 95), ("wisconsin-ni", 50, 99),
    ];
}
