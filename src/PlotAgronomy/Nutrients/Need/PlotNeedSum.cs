using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>From a request to the need of a plot: ours first, then the laboratory's printed figures, then what was set by
/// hand.</summary>
internal sealed class PlotNeedSum
{
    private readonly PlotNeedRequest request;
    private readonly List<Finding> findings = [];
    private readonly NitrogenOfBlend nitrogen;
    private readonly ImmutableArray<SecondaryAnswer> secondary;

    internal PlotNeedSum(PlotNeedRequest request)
    {
        this.request = request;
        var asked = new ComponentNeeds(request);
        Components = asked.Run();
        ImmutableArray<ComponentNeed> counted = [.. Components.Where(c => c.Counts)];
        nitrogen = new NitrogenOfBlend(request, Components);
        secondary =
        [
            .. request
                .SecondaryRules.Where(r => counted.Any(c => r.IsFor(c.Component.Kind)))
                .Select(r => r.Answer(request.Report, request.SecondarySetting)),
        ];
        findings.AddRange(asked.Findings);
        findings.AddRange(nitrogen.Findings);
        findings.AddRange(secondary.SelectMany(s => s.Findings));
        SourceIds =
        [
            .. nitrogen.SourceIds,
            .. secondary.SelectMany(s => s.SourceIds),
            .. counted.SelectMany(c => new[] { c.Phosphate, c.Potash }).OfType<NutrientNeed>().SelectMany(n => n.SourceIds),
        ];
        Computed = new OwnTargets(Components, nitrogen, secondary, findings).All();
        Used = Use();
        Lines = new NeedLines(request, Components, nitrogen, secondary);
        NitrogenDoses = Used.FirstOrDefault(t => t.Nutrient == PlantNutrient.Nitrogen) is { } target
            ? nitrogen.Doses(target)
            : [];
    }

    internal ImmutableArray<ComponentNeed> Components { get; }

    /// <summary>Our own targets.</summary>
    internal ImmutableArray<NutrientTarget> Computed { get; }

    internal ImmutableArray<NutrientTarget> Used { get; }

    internal ImmutableArray<NitrogenDose> NitrogenDoses { get; }

    internal NeedLines Lines { get; }

    internal ImmutableArray<string> SourceIds { get; }

    internal IReadOnlyList<Finding> Findings => findings;

    private ImmutableArray<NutrientTarget> Use()
    {
        var targets = new UsedTargets(request, Computed, nitrogen, findings);
        targets.ComparePrinted();
        CheckInstitutions();
        var used = targets.All();
        CheckNitrogen(used);
        if (
            Components.All(c => !ComponentNeeds.UseOf(request, c.Component.Kind).IsCarriedOff)
            && request.System.Philosophy == SystemPhilosophy.BuildUpAndMaintenance
        )
        {
            findings.RemoveAll(f => f.Code == NutrientCodes.NothingCarriedOff);
            findings.Add(FindingCatalog.Create(NutrientCodes.RemovalIgnored));
        }

        return used;
    }

    private void CheckInstitutions()
    {
        if (ProgramSystems.Foreign(request.Report, request.System) is { } program)
        {
            findings.Add(
                FindingCatalog.Create(
                    NutrientCodes.InstitutionsMixed,
                    ("program", program.Institution.Name),
                    ("system", request.System.Name)
                )
            );
        }
    }

    private void CheckNitrogen(ImmutableArray<NutrientTarget> used)
    {
        if (
            used.FirstOrDefault(t => t.Nutrient == PlantNutrient.Nitrogen) is not { } target
            || target.AtLeast <= ApplicationRate.Zero
        )
        {
            return;
        }

        if (nitrogen.IsLegumesOnly)
        {
            findings.Add(
                FindingCatalog.Create(NutrientCodes.NitrogenOnLegume, ("rate", Amounts.Print(target.AtLeast.PoundsPerAcre, 1)))
            );
        }

        var doses = nitrogen.Doses(target);
        double largest = (doses.IsEmpty ? NitrogenOfBlend.SpreadAtMost(target) : doses.Max(d => d.High)).PoundsPerAcre;
        if (largest > NutrientConstants.All["largest-single-dose"])
        {
            findings.Add(FindingCatalog.Create(NutrientCodes.NitrogenSingleDose, ("rate", Amounts.Print(largest, 1))));
        }

        findings.Add(FindingCatalog.Create(NutrientCodes.UreaNeedsRain));
    }
}
