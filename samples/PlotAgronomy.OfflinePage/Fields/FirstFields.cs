namespace PlotAgronomy.OfflinePage.Fields;

/// <summary>Which fields of a part stand there at once; the others wait under "More". What is required, what is filled in and
/// what is wrong always stands there.</summary>
internal static class FirstFields
{
    private static readonly Dictionary<string, string[]> Fields = new()
    {
        ["plot"] = ["name", "place", "sides", "area", "texture", "drainage", "use"],
        ["sides"] = ["shape", "length", "width"],
        ["soilReport"] = ["laboratory", "sampled", "waterPh", "buffer", "cec", "readings", "recommendation"],
        ["buffer"] = ["name", "ph"],
        ["charge"] = ["value", "unit"],
        ["reading"] = ["analyte", "value", "unit", "extractant"],
        ["printedRecommendation"] = ["lime", "nitrogen", "phosphate", "potash"],
        ["printedLime"] = ["rate", "targetPh"],
        ["growing"] = ["kinds"],
        ["blendKind"] = ["kind", "rate", "rateIs"],
        ["materials"] = ["seedLots", "lime", "fertilizers"],
        ["seedLot"] = ["kind", "pureSeed", "germination", "hardSeed", "tested", "package", "price"],
        ["limeMaterial"] = ["name", "form", "cce", "package", "price"],
        ["fertilizer"] = ["name", "analysis", "package", "price"],
        ["spreader"] = ["name", "swath", "hopper"],
        ["measuredRun"] = ["kind", "gate", "weighed", "distance", "time"],
        ["standsNow"] = ["cover", "kind"],
        ["homePh"] = ["ph"],
    };

    internal static bool Has(string part, string field) => !Fields.TryGetValue(part, out var first) || first.Contains(field);
}
