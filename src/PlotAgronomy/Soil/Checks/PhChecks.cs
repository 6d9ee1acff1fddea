using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>Plausibility of pH readings.</summary>
internal static class PhChecks
{
    private static double LowestPh => SoilConstants.All["ph-low"];

    private static double LimeNotExpectedFrom => SoilConstants.All["lime-not-expected-ph"];

    internal static ImmutableArray<Finding> OfTyped(double typed)
    {
        if (typed is > 0 and <= 14)
        {
            return [];
        }

        double shifted = typed / 10;
        return shifted >= LowestPh && shifted <= SoilConstants.All["shifted-ph-high"]
            ? [FindingCatalog.Create(SoilCodes.PhDecimalPoint, ("typed", Number(typed)), ("likely", Number(shifted)))]
            : [FindingCatalog.Create(SoilCodes.PhImpossible, ("typed", Number(typed)))];
    }

    internal static IEnumerable<Finding> Of(SoilReport report)
    {
        foreach (var (value, text) in Values(report))
        {
            if (value < LowestPh || value > SoilConstants.All["ph-high"])
            {
                yield return FindingCatalog.Create(SoilCodes.PhUnlikely, ("reading", text));
            }
        }

        if (report.WaterPh is { } water && report.SaltPh is { } salt && salt.Value > water.Value)
        {
            yield return FindingCatalog.Create(
                SoilCodes.SaltPhAboveWater,
                ("salt", salt.ToString()),
                ("water", water.ToString())
            );
        }

        foreach (var finding in report.BufferPhs.SelectMany(OfBuffer).Concat(SwappedPh.Of(report, report.WaterPh)))
        {
            yield return finding;
        }

        if (
            report.BufferPhs.IsEmpty
            && report.ExchangeableAcidity is null
            && !IsOrganic(report)
            && report.WaterPh is { } acid
            && acid.Value < LimeNotExpectedFrom
        )
        {
            yield return FindingCatalog.Create(SoilCodes.BufferMissing, ("water", acid.ToString()));
        }
    }

    /// <summary>Organic soil is limed by its pH alone: no buffer is missing.</summary>
    private static bool IsOrganic(SoilReport report) =>
        (report.SoilClass ?? (report.OrganicMatter?.Percent > SoilConstants.All["organic-from"] ? SoilClass.Organic : null))
        == SoilClass.Organic;

    private static IEnumerable<Finding> OfBuffer(BufferPh buffer)
    {
        if (BufferStart.Of(buffer.Buffer) is not { } start)
        {
            yield break;
        }

        if (buffer.Value > start)
        {
            yield return FindingCatalog.Create(
                SoilCodes.BufferAboveStart,
                ("reading", buffer.ToString()),
                ("start", Number(start))
            );
        }
        else if (
            start - buffer.Value < SoilConstants.All["buffer-placeholder-margin"]
            && BufferStart.IsAboveTheTerms(buffer.Buffer)
        )
        {
            yield return FindingCatalog.Create(
                SoilCodes.BufferPlaceholder,
                ("reading", buffer.ToString()),
                ("start", Number(start))
            );
        }
    }

    private static IEnumerable<(double Value, string Text)> Values(SoilReport report)
    {
        if (report.WaterPh is { } water)
        {
            yield return (water.Value, water.ToString());
        }

        if (report.SaltPh is { } salt)
        {
            yield return (salt.Value, salt.ToString());
        }
    }

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
