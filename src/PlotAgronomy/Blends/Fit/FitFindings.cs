using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>The cautions of kinds that are to share a plot.</summary>
internal static class FitFindings
{
    internal static IEnumerable<Finding> Of(FitFacts fit) =>
        Soil(fit)
            .Concat(Sowing(fit))
            .Concat(Dates(fit))
            .Concat(Nitrogen(fit))
            .Concat(CompanionFindings.Of(fit))
            .Concat(HazardFindings.Of(fit))
            .Concat(fit.Inoculants.SelectMany(i => i.Findings))
            .Concat(Remembered(fit));

    private static IEnumerable<Finding> Soil(FitFacts fit)
    {
        CropKind[] kinds = [.. fit.Parts.Select(p => p.Kind)];
        foreach (var unsuited in GroundFindings.Of(kinds, fit.Request.Soil))
        {
            yield return unsuited;
        }

        if (fit.PhSpan is { } span && span.Low > span.High)
        {
            yield return FindingCatalog.Create(
                BlendCodes.PhApart,
                ("kinds", GroundFindings.WithPh(kinds.Where(k => k.Ph is not null)))
            );
        }

        if (fit.DrainageSpan is { } drain && drain.Wettest > drain.Driest)
        {
            yield return FindingCatalog.Create(BlendCodes.DrainageApart);
        }
    }

    private static IEnumerable<Finding> Sowing(FitFacts fit)
    {
        if (fit.Passes.Length > 1)
        {
            yield return FindingCatalog.Create(
                BlendCodes.Passes,
                ("count", Amounts.Print(fit.Passes.Length, 0)),
                ("passes", string.Join("; ", fit.Passes))
            );
        }

        foreach (var pass in fit.Passes.Where(p => p.DepthsAreApart))
        {
            yield return FindingCatalog.Create(
                BlendCodes.PassDepthsApart,
                ("kinds", StandNames.Of(pass.Kinds.Select(p => p.Kind!)))
            );
        }

        string[] groups = [.. fit.Inoculants.Select(i => i.Group.ToString()).Distinct()];
        if (groups.Length > 1)
        {
            yield return FindingCatalog.Create(
                BlendCodes.Inoculants,
                ("count", Amounts.Print(groups.Length, 0)),
                ("groups", string.Join("; ", groups))
            );
        }
    }

    private static IEnumerable<Finding> Dates(FitFacts fit)
    {
        var seasons = fit.Parts.Select(p => p.Kind).ToLookup(k => k.GrowingSeason);
        bool meet = fit.Dates is { Ranges.IsEmpty: false };
        bool isFrostSeeded = fit.Parts.All(p => p.Component.Method == SowingMethod.FrostSeeded);
        if (!meet && !isFrostSeeded && seasons[GrowingSeason.Warm].Any() && seasons[GrowingSeason.Cool].Any())
        {
            yield return FindingCatalog.Create(
                BlendCodes.WarmAndCool,
                ("warm", StandNames.Of(seasons[GrowingSeason.Warm])),
                ("cool", StandNames.Of(seasons[GrowingSeason.Cool]))
            );
        }

        if (fit.Dates is not { } dates)
        {
            yield break;
        }

        if (!dates.Unknown.IsEmpty)
        {
            yield return FindingCatalog.Create(BlendCodes.NoDates, ("kinds", StandNames.Of(dates.Unknown)));
        }

        if (dates.Ranges.IsEmpty && dates.Unknown.Length < fit.Parts.Length)
        {
            yield return FindingCatalog.Create(BlendCodes.NoCommonDay);
        }

        if (fit.Request.SowingDay is { } day)
        {
            foreach (var off in fit.Parts.Select(p => DayFinding.Of(p.Kind, day, dates.Windows[p.Kind.Id])).OfType<Finding>())
            {
                yield return off;
            }
        }
    }

    private static IEnumerable<Finding> Nitrogen(FitFacts fit)
    {
        StandMember[] legumes = [.. fit.Members.Where(m => m.Kind.IsLegume)];
        StandMember[] hungry =
        [
            .. fit.Members.Where(m =>
                m.Kind.Group
                    is FunctionalGroup.Cereal
                        or FunctionalGroup.Grass
                        or FunctionalGroup.Brassica
                        or FunctionalGroup.RootCrop
            ),
        ];
        bool manyLegumes = !Tolerance.IsBelow(legumes.Sum(m => m.Share), BlendConstants.All["legume-share"]);
        bool muchHunger = !Tolerance.IsBelow(hungry.Sum(m => m.Share), BlendConstants.All["hungry-share"]);
        if (legumes.Length > 0)
        {
            yield return FindingCatalog.Create(BlendCodes.NitrogenEstimated);
        }

        if (manyLegumes && muchHunger)
        {
            yield return FindingCatalog.Create(
                BlendCodes.NitrogenConflict,
                ("legumes", StandNames.Of(legumes.Select(m => m.Kind))),
                ("hungry", StandNames.Of(hungry.Select(m => m.Kind)))
            );
        }

        if (fit.Request.NitrogenPlanned is { } planned)
        {
            if (planned.PoundsPerAcre > 0 && manyLegumes)
            {
                yield return FindingCatalog.Create(
                    BlendCodes.NitrogenAgainstLegumes,
                    ("amount", Amounts.Print(planned, "lb/ac", 1)),
                    ("share", Amounts.Print(legumes.Sum(m => m.Share), 2))
                );
            }

            if (planned.PoundsPerAcre <= 0 && muchHunger)
            {
                yield return FindingCatalog.Create(
                    BlendCodes.NitrogenHungry,
                    ("kinds", StandNames.Of(hungry.Select(m => m.Kind))),
                    ("share", Amounts.Print(hungry.Sum(m => m.Share), 2))
                );
            }
        }
    }

    /// <summary>What of the report rests on figures from memory: only those that took part in it.</summary>
    private static IEnumerable<Finding> Remembered(FitFacts fit)
    {
        CropKind[] kinds = [.. fit.Parts.Select(p => p.Kind)];
        return MemoryNotes
            .For("the pH limits", kinds.Select(k => (k, k.Ph?.Evidence)))
            .Concat(MemoryNotes.For("the drainage", kinds.Select(k => (k, k.Drainage?.Evidence))))
            .Concat(MemoryNotes.For("the sowing depths", kinds.Select(k => (k, k.Depth?.Evidence))))
            .Concat(MemoryNotes.For("the nitrogen fixed", fit.Members.Select(m => (m.Kind, m.Kind.Nitrogen?.Evidence))));
    }
}
