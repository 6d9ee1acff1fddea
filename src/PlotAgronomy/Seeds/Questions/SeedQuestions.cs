using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>What to ask of tags and of the plot where a fact about seed is missing.</summary>
internal static class SeedQuestions
{
    internal static OpenQuestion<PlantingRegion> Region() =>
        QuestionCatalog.Ask(SeedCodes.AskRegion, PlantingRegion.All, region => $"{region.Name}: {region.Covers}");

    /// <summary>All classes but the one that no plot in a field has.</summary>
    internal static OpenQuestion<DrainageClass> Drainage() =>
        QuestionCatalog.Ask(
            SeedCodes.AskDrainage,
            [.. Enum.GetValues<DrainageClass>().Where(d => d != DrainageClass.Excessive)],
            drainage => DrainageTolerance.Classes[drainage]
        );

    internal static OpenQuestion<double> Count(CropKind kind) =>
        QuestionCatalog.Ask<double>(
            SeedCodes.AskCount,
            [],
            count => $"{Amounts.Print(count, 0)} a pound",
            ("kind", kind.ShortName)
        );

    /// <summary>The ways of sowing that a rate is published for.</summary>
    internal static OpenQuestion<SowingMethod> OtherMethod(CropKind kind, SowingMethod method) =>
        QuestionCatalog.Ask(
            SeedCodes.AskRate,
            [.. Enum.GetValues<SowingMethod>().Where(m => kind.Rates?.For(m) is not null)],
            SowingMethods.InWords,
            ("kind", kind.ShortName),
            ("method", SowingMethods.InWords(method))
        );

    /// <summary>The lowest rate that is printed is counted until this is answered.</summary>
    internal static OpenQuestion<PrintedEnd> FullRates(
        SowingMethod method,
        IReadOnlyList<(CropKind Kind, PureLiveSeedRateRange Printed)> few
    ) =>
        QuestionCatalog.Ask(
            SeedCodes.AskFullRate,
            [PrintedEnd.Lowest, PrintedEnd.Highest],
            end => end == PrintedEnd.Lowest ? "the lowest printed" : "the highest printed",
            ("kinds", string.Join(", ", few.Select(f => f.Kind.ShortName))),
            ("method", SowingMethods.InWords(method)),
            ("ranges", string.Join("; ", few.Select(f => RangeOf(f.Kind, f.Printed))))
        );

    private static string RangeOf(CropKind kind, PureLiveSeedRateRange printed)
    {
        string high =
            printed.High.PoundsPerAcre > printed.Low.PoundsPerAcre ? $" to {Amounts.Print(printed.High.PoundsPerAcre, 2)}" : "";
        string remembered = printed.Publications == 0 ? ", remembered" : "";
        return $"{kind.ShortName} {Amounts.Print(printed.Low.PoundsPerAcre, 2)}{high}{remembered}";
    }

    /// <summary>Whether a lot is treated; an untreated one may lie on the surface.</summary>
    internal static OpenQuestion<bool> Untreated(CropKind kind) =>
        QuestionCatalog.Ask<bool>(
            SeedCodes.AskUntreated,
            [],
            treated => treated ? "treated" : "not treated",
            ("kind", kind.ShortName)
        );

    /// <summary>What germinates of a lot without a tag.</summary>
    internal static OpenQuestion<Fraction> HomeTest(SeedLot lot) =>
        QuestionCatalog.AskNumber(
            SeedCodes.AskHomeTest,
            Fraction.FromPercent,
            germination => Amounts.Print(germination, 0),
            ("lot", lot.ToString()),
            ("purity", $"{Amounts.Print(SeedConstants.All["untagged-purity"], 0)} %")
        );

    /// <summary>Months so many before the day of sowing.</summary>
    internal static OpenQuestion<TestMonth> TestMonth(SeedLot lot, DateOnly sowing) =>
        QuestionCatalog.AskNumber(
            SeedCodes.AskTestMonth,
            months =>
            {
                var day = sowing.AddMonths(-(int)months);
                return Seeds.TestMonth.FromYearAndMonth(day.Year, day.Month);
            },
            month => month.ToString(),
            ("lot", lot.ToString())
        );
}
