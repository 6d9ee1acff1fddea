using System.Globalization;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using PlotAgronomy.Spreading;
using UnitsNet;

namespace PlotAgronomy.Sheets;

/// <summary>Numbers as they are rounded for the sheet. Rounding happens here and nowhere before.</summary>
internal static class SheetText
{
    /// <summary>Less than this is dust of arithmetic, not a leftover.</summary>
    private const double LeastLeftOverPounds = 0.005;

    internal static string Weight(Mass mass) => Amounts.PrintForScale(mass);

    internal static string Weight(BulkSeedMass seed) => Weight(Mass.FromPounds(seed.Pounds));

    /// <summary>What a hopper on a hanging scale is lighter by: no grams.</summary>
    internal static string ByHopper(Mass mass) => mass.Pounds < 1 ? Amounts.Print(mass, "oz", 1) : Weight(mass);

    internal static string LeftOver(Mass mass)
    {
        double pounds = mass.Pounds;
        return pounds < LeastLeftOverPounds ? "none" : Weight(mass);
    }

    internal static string LeftOver(BulkSeedMass seed) => LeftOver(Mass.FromPounds(seed.Pounds));

    internal static string Name(CropKind kind) => kind.ShortName;

    /// <summary>A lot by its mark, where it has one of its own.</summary>
    internal static string Name(SeedLot lot) =>
        lot.Label == lot.Kind.CommonName ? Name(lot.Kind) : $"{Name(lot.Kind)}, lot {lot.Label}";

    internal static string Rate(ApplicationRate rate) =>
        Amounts.Print(
            rate,
            "lb/ac",
            rate.PoundsPerAcre >= 20 ? 0
                : rate.PoundsPerAcre >= 2 ? 1
                : 2
        );

    internal static string Tons(ApplicationRate rate) => Amounts.Print(rate, "ton/ac", 2);

    /// <summary>Both ends, or one figure where they print alike.</summary>
    internal static string FromTo(double low, double high, int decimals) =>
        Amounts.Print(low, decimals) is var from && Amounts.Print(high, decimals) is var to && from == to
            ? from
            : $"{Amounts.Print(low, decimals)} to {Amounts.Print(high, decimals)}";

    internal static string Packages(double? count, Package package) =>
        count is { } packages && package.IsWhole
            ? $"{Amounts.Print(packages, 2)} x {Amounts.Print(package.Weight, "lb", 1)}"
            : "by weight";

    /// <summary>Whole bags, or tons where it is sold in bulk.</summary>
    internal static string Bought(LimeOrder order) =>
        order.Bags is { } bags
            ? Packages(bags, order.Request.Package)
            : $"{Amounts.Print(order.Product, "ton", 2)} in bulk";

    internal static string Distance(Length length) => Amounts.Print(length, "ft", 0);

    internal static string Minutes(TimeSpan time) => Amounts.Print(time, "min", time.TotalMinutes < 10 ? 1 : 0);

    internal static string Date(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>From day to day in the words of a calendar on the wall; the year where it is not that of sowing.</summary>
    internal static string Days(DateOnly from, DateOnly to, DateOnly? sowing)
    {
        if (from.Year != to.Year)
        {
            return $"{Day(from)}, {Year(from)} to {Day(to)}, {Year(to)}";
        }

        string first = Day(from);
        string last =
            from == to ? ""
            : from.Month == to.Month ? $" to {to.Day.ToString(CultureInfo.InvariantCulture)}"
            : $" to {Day(to)}";
        string year = to.Year == sowing?.Year ? "" : $", {Year(to)}";
        return $"{first}{last}{year}";
    }

    private static string Year(DateOnly day) => day.Year.ToString(CultureInfo.InvariantCulture);

    private static string Day(DateOnly day) => day.ToString("MMM d", CultureInfo.InvariantCulture);

    /// <summary>A finding as a sentence among others.</summary>
    internal static string Sentence(Finding finding) =>
        Capital(finding.Text[^1] is '.' or '?' ? finding.Text : $"{finding.Text}.");

    /// <summary>The same where its subject stands before it already.</summary>
    internal static string Bare(Finding finding) =>
        finding.Subject is { } about && finding.Text.StartsWith($"{about}: ", StringComparison.Ordinal)
            ? Capital(Sentence(finding)[(about.Length + 2)..])
            : Sentence(finding);

    internal static string Capital(string text) => text.Length == 0 ? text : $"{char.ToUpperInvariant(text[0])}{text[1..]}";

    /// <summary>Whole bags and what is weighed of one more; less than a bag is weighed alone.</summary>
    internal static string Load(WalkedPass pass) =>
        pass.InPackages is not ({ } whole and > 0, { } rest) ? Weight(pass.Load)
        : LeftOver(rest) is "none" ? Bags(whole)
        : $"{Bags(whole)} + {Weight(rest)}";

    private static string Bags(int whole) => Amounts.PrintCount(whole, "bag");

    /// <summary>Inches as a ruler shows them.</summary>
    internal static string Inches(Length from, Length to)
    {
        string low = Ruler(from),
            high = Ruler(to);
        return low == high ? $"{low} in" : $"{low} to {high} in";
    }

    private static string Ruler(Length length)
    {
        double inches = length.Inches;
        double eighths = Math.Round(inches * 8, MidpointRounding.AwayFromZero);
        int whole = (int)(eighths / 8);
        string part = (int)(eighths % 8) switch
        {
            0 => "",
            2 => "1/4",
            4 => "1/2",
            6 => "3/4",
            var odd => $"{Amounts.Print(odd, 0)}/8",
        };
        return whole == 0 ? part
            : part.Length == 0 ? Amounts.Print(whole, 0)
            : $"{Amounts.Print(whole, 0)} {part}";
    }

    /// <summary>How well the numbers of a row are known.</summary>
    internal static string Standing(DataStatus status) =>
        status == DataStatus.Memory ? "from memory" : DataStatuses.Words[status];

    /// <summary>What a row of a comparison marked as from memory means.</summary>
    internal const string FromMemory =
        "Rows from memory: their numbers were not yet checked against the publication; compare with the printed table before "
        + "relying on them. [data-from-memory]";

    /// <summary>Laboratory, day and depth of a report.</summary>
    internal static string Origin(SoilReport report)
    {
        string sampled = report.SampledOn is { } day ? Date(day) : "on an unknown day";
        string deep = report.SampledDepth is { } depth ? $", {Amounts.Print(depth, "in", 1)} deep" : "";
        return $"Report of {report.Laboratory}, sampled {sampled}{deep}.";
    }

    /// <summary>What a report says of the soil's acidity.</summary>
    internal static string Acidity(SoilReport report)
    {
        string water = report.WaterPh is { } ph
            ? $"Soil pH in water {Amounts.Print(ph.Value, 1)}"
            : "Soil pH in water not printed";
        string buffer = string.Concat(
            report.BufferPhs.Select(b => $"; {SoilWords.Buffers[b.Buffer]} buffer pH {Amounts.Print(b.Value, 2)}")
        );
        string exchangeable = report.ExchangeableAcidity is { } acidity ? $"; exchangeable acidity {acidity}" : "";
        return $"{water}{buffer}{exchangeable}.";
    }

    internal static string Symbol(PlantNutrient nutrient) => PlantNutrients.Symbols[nutrient];

    internal static string Nutrient(PlantNutrient nutrient) => PlantNutrients.InFull(nutrient);
}
