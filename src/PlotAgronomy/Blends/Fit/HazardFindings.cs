using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>Poison, noxious listings, treated seed and grain on the surface.</summary>
internal static class HazardFindings
{
    /// <summary>Level of a hazard that is listed only to say that it does not matter.</summary>
    private const string NoRuleNeeded = "very low";

    private static readonly Table<KindSelector> Grain = new("Blends/Data/surface-grain.csv", r =>
        KindSelector.Read(r, "selects")
    );

    internal static IEnumerable<Finding> Of(FitFacts fit)
    {
        var kinds = fit.Parts.Select(p => p.Kind).ToArray();
        foreach (
            var group in kinds
                .SelectMany(k => k.Hazards.Where(h => h.Level != NoRuleNeeded).Select(h => new { Kind = k, Hazard = h }))
                .GroupBy(x => new { x.Hazard.Type, x.Hazard.Level, x.Hazard.Rule })
        )
        {
            yield return Finding(group.Key.Type, StandNames.Of(group.Select(x => x.Kind)), group.Key.Level, group.Key.Rule);
            if (
                group.First().Hazard.Evidence.FindingFor($"the hazards of {StandNames.Of(group.Select(x => x.Kind))}") is
                { } memory
            )
            {
                yield return memory;
            }
        }

        if (
            fit.Request.IsSeedLeftOnSurface
            && kinds.Where(k => Grain.Rows.Any(g => g.Selects(k))).ToArray() is { Length: > 0 } grain
        )
        {
            yield return FindingCatalog.Create(BlendCodes.GrainOnSurface, ("kinds", StandNames.Of(grain)));
        }

        foreach (var component in fit.Parts.Select(p => p.Component))
        {
            foreach (var caution in component.Lot?.Cautions(component.Method) ?? [])
            {
                yield return caution;
            }

            foreach (var caution in component.IsTreated ? Treated(component, fit.Request.IsSeedLeftOnSurface) : [])
            {
                yield return caution;
            }
        }
    }

    private static IEnumerable<Finding> Treated(BlendComponent component, bool leftOnSurface)
    {
        yield return FindingCatalog.Create(SeedCodes.Treated);
        if (component.Method != SowingMethod.Drilled || leftOnSurface)
        {
            yield return FindingCatalog.Create(BlendCodes.TreatedOnSurface, ("kind", component.Kind.ShortName));
        }

        if (component.Kind.IsLegume)
        {
            yield return FindingCatalog.Create(SeedCodes.TreatedLegume);
        }
    }

    private static Finding Finding(HazardType type, string kinds, string level, string rule)
    {
        (string, string)[] places = [("kinds", kinds), ("level", level), ("rule", rule)];
        return type switch
        {
            HazardType.NoxiousListing => FindingCatalog.Create(BlendCodes.Noxious, places),
            HazardType.Bloat => FindingCatalog.Create(BlendCodes.Livestock, places),
            HazardType.Allelopathy => FindingCatalog.Create(BlendCodes.Residue, places),
            _ => FindingCatalog.Create(BlendCodes.Poison, [("hazard", KindHazard.Openings[type]), .. places]),
        };
    }
}
