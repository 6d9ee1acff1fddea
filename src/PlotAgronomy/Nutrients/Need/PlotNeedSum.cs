using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>From a request to the need of a plot: ours first, then the laboratory's printed figures, then what was set by
/// hand.</summary>
internal sealed class PlotNeedSum
{
    private readonly PlotNeedRequest request;
    private readonly List<Finding> findings = [];
    private readonly List<string> sourceIds = [];
    private readonly ImmutableArray<ComponentNeed> components;
    private readonly ImmutableArray<ComponentNeed> counted;
    private readonly NitrogenOfBlend nitrogen;
    private readonly ImmutableArray<SecondaryAnswer> secondary;

    internal PlotNeedSum(PlotNeedRequest request)
    {
        this.request = request;
        var asked = new ComponentNeeds(request);
        components = asked.Run();
        counted = [.. components.Where(c => c.Counts)];
        nitrogen = new NitrogenOfBlend(request, components);
        secondary =
        [
            .. request
                .SecondaryRules.Where(r => counted.Any(c => r.IsFor(c.Component.Kind)))
                .Select(r => r.Answer(request.Report, request.SecondarySetting)),
        ];
        findings.AddRange(asked.Findings);
        findings.AddRange(nitrogen.Findings);
        findings.AddRange(secondary.SelectMany(s => s.Findings));
        sourceIds.AddRange(nitrogen.SourceIds);
        sourceIds.AddRange(secondary.SelectMany(s => s.SourceIds));
        sourceIds.AddRange(
            counted.SelectMany(c => new[] { c.Phosphate, c.Potash }).OfType<NutrientNeed>().SelectMany(n => n.SourceIds)
        );
    }

    internal PlotNeed Run()
    {
        ImmutableArray<NutrientTarget> ours =
        [
            .. new[] { Nitrogen(), MostDemanding(PlantNutrient.Phosphate), MostDemanding(PlantNutrient.Potash) }
                .OfType<NutrientTarget>()
                .Concat(Secondary()),
        ];
        ComparePrinted(ours);
        CheckInstitutions();
        var used = Used(ours);
        CheckNitrogen(used);
        if (
            components.All(c => !ComponentNeeds.UseOf(request, c.Component.Kind).IsCarriedOff)
            && request.System.Philosophy == SystemPhilosophy.BuildUpAndMaintenance
        )
        {
            findings.RemoveAll(f => f.Code == "nutrient-nothing-carried-off");
            findings.Add(FindingCatalog.Create("nutrient-removal-ignored"));
        }

        var doses = used.FirstOrDefault(t => t.Nutrient == PlantNutrient.Nitrogen) is { } target
            ? nitrogen.Doses(target.AtLeast, SpreadAtMost(target))
            : [];
        return new PlotNeed(used, findings, sourceIds, () => Lines(used))
        {
            Computed = [.. ours.OrderBy(t => t.Nutrient)],
            Printed = request.Printed,
            Components = components,
            NitrogenDoses = doses,
        };
    }

    /// <summary>A ceiling over a need of nothing is no dressing.</summary>
    private static ApplicationRate SpreadAtMost(NutrientTarget target) =>
        target.AtLeast > ApplicationRate.Zero ? target.AtMost ?? target.AtLeast : target.AtLeast;

    private NutrientTarget? Nitrogen()
    {
        if (!nitrogen.IsAnswered)
        {
            return null;
        }

        var low = ApplicationRate.FromPoundsPerAcre(nitrogen.LowPounds);
        ApplicationRate? high =
            nitrogen.IsLegumesOnly || nitrogen.HighPounds <= 0
                ? ApplicationRate.FromPoundsPerAcre(BlendNeedRule.LegumeNitrogenCeilingPounds)
            : nitrogen.HighPounds > nitrogen.LowPounds ? ApplicationRate.FromPoundsPerAcre(nitrogen.HighPounds)
            : null;
        return NutrientTarget.Create(PlantNutrient.Nitrogen, low, high, nitrogen.Reason);
    }

    private NutrientTarget? MostDemanding(PlantNutrient nutrient)
    {
        if (
            counted.Where(c => c.For(nutrient) is not null).MaxBy(c => (c.For(nutrient)!.Rate, c.For(nutrient)!.PublishedHigh))
            is not { } leading
        )
        {
            return null;
        }

        var need = leading.For(nutrient)!;
        string range =
            need.PublishedHigh > need.PublishedLow
                ? $" The printed range is {NitrogenAnswer.Range(need.PublishedLow, need.PublishedHigh)} lb/ac."
                : "";
        string reason = $"{need.Why} {RowRead(leading, nutrient)}{range}";
        return need.IsLegalMaximum
            ? NutrientTarget.Create(nutrient, ApplicationRate.Zero, need.Rate, reason)
            : NutrientTarget.Create(
                nutrient,
                need.Rate,
                IsUnneededPhosphate(nutrient, need.Rate) ? need.PublishedHigh : null,
                reason
            );
    }

    /// <summary>Where the test calls for no phosphate, none may come along with another nutrient.</summary>
    private static bool IsUnneededPhosphate(PlantNutrient nutrient, ApplicationRate need) =>
        nutrient == PlantNutrient.Phosphate && need <= ApplicationRate.Zero;

    /// <summary>Which row the figure stands in, and whose it is when the kinds differ.</summary>
    private string RowRead(ComponentNeed leading, PlantNutrient nutrient)
    {
        var row = leading.RowFor(nutrient)!.Value;
        if (CropRows.IsWildlifePlot(row))
        {
            return $"It is read from the wildlife plot row ({CropRows.WordsFor(row)}).";
        }

        bool differ = counted.Where(c => c.For(nutrient) is not null).Select(c => c.For(nutrient)!.Rate).Distinct().Count() > 1;
        return $"For {leading.Component.Kind.ShortName}{(differ ? ", the most demanding of the kinds that count," : "")} it is "
            + "read from the row for "
            + $"{CropRows.WordsFor(row)}{(KindProxy.For(leading.Component.Kind).IsOwn(row) ? "" : ", the nearest")}.";
    }

    private IEnumerable<NutrientTarget> Secondary()
    {
        foreach (
            var group in secondary
                .Where(s => s is { Low: not null, High: not null })
                .GroupBy(s => s.Rule.Nutrient)
                .OrderBy(g => g.Key)
        )
        {
            var leading = group.MaxBy(s => s.High)!;
            var low = leading.Low!.Value;
            var high = leading.High!.Value;
            if (group.Key == PlantNutrient.Boron && high > ApplicationRate.Zero)
            {
                (low, high) = LimitBoron(low, high);
            }

            bool ceiling = group.Key == PlantNutrient.Boron || high > low;
            yield return NutrientTarget.Create(group.Key, low, ceiling ? high : null, $"{leading.Rule.Title}: {leading.Reason}.");
        }
    }

    /// <summary>A sensitive kind in the blend sets the limit: the careful plot rate, whatever a single crop's rule
    /// allows.</summary>
    private (ApplicationRate Low, ApplicationRate High) LimitBoron(ApplicationRate low, ApplicationRate high)
    {
        if (components.FirstOrDefault(c => KindProxy.For(c.Component.Kind).IsSensitiveToBoron) is not { } sensitive)
        {
            return (low, high);
        }

        var limit = ApplicationRate.FromPoundsPerAcre(SecondaryRule.Named("plot-boron").Rows[0].RateHigh!.Value);
        findings.Add(
            FindingCatalog.Create(
                "nutrient-boron-sensitive-kind",
                ("kind", sensitive.Component.Kind.ShortName),
                ("limit", Amounts.Print(limit.PoundsPerAcre, 4))
            )
        );
        return (low < limit ? low : limit, high < limit ? high : limit);
    }

    private void ComparePrinted(ImmutableArray<NutrientTarget> ours)
    {
        if (request.Printed is not { } printed)
        {
            return;
        }

        findings.Add(FindingCatalog.Create("nutrient-printed-crop", ("crop", printed.Crop)));
        foreach (var rate in printed.Rates)
        {
            if (
                ours.FirstOrDefault(t => t.Nutrient == rate.Nutrient) is { } target
                && BlendNeedRule.Differ(target.AtLeast.PoundsPerAcre, rate.Low.PoundsPerAcre, rate.High.PoundsPerAcre)
            )
            {
                findings.Add(
                    FindingCatalog.Create(
                        "nutrient-printed-differs",
                        ("printed", NitrogenAnswer.Range(rate.Low, rate.High)),
                        ("nutrient", SoilWords.For(rate.Nutrient)),
                        (
                            "system",
                            rate.Nutrient is PlantNutrient.Phosphate or PlantNutrient.Potash
                                ? request.System.Name
                                : "the rule here"
                        ),
                        ("ours", Amounts.Print(target.AtLeast.PoundsPerAcre, 1))
                    )
                );
            }
        }
    }

    private void CheckInstitutions()
    {
        if (ProgramSystems.Foreign(request.Report, request.System) is { } program)
        {
            findings.Add(
                FindingCatalog.Create("nutrient-institutions-mixed", ("program", program.Name), ("system", request.System.Name))
            );
        }
    }

    private ImmutableArray<NutrientTarget> Used(ImmutableArray<NutrientTarget> ours)
    {
        var used = ours.ToDictionary(t => t.Nutrient);
        foreach (var rate in request.Printed?.Rates ?? [])
        {
            used[rate.Nutrient] = NutrientTarget.Create(
                rate.Nutrient,
                rate.Low,
                PrintedCeiling(rate),
                $"Printed by {request.Printed!.Laboratory} for "
                    + $"{request.Printed.Crop}{Beside(ours.FirstOrDefault(t => t.Nutrient == rate.Nutrient))}."
            );
        }

        foreach (var target in request.Overrides)
        {
            string before = used.TryGetValue(target.Nutrient, out var replaced)
                ? $"{Amounts.Print(replaced.AtLeast.PoundsPerAcre, 1)} lb/ac"
                : "nothing";
            findings.Add(
                FindingCatalog.Create(
                    "nutrient-override",
                    ("nutrient", SoilWords.For(target.Nutrient)),
                    ("rate", Amounts.Print(target.AtLeast.PoundsPerAcre, 1)),
                    ("reason", target.Reason),
                    ("ours", before)
                )
            );
            used[target.Nutrient] = target;
        }

        return [.. used.Values.OrderBy(t => t.Nutrient)];
    }

    /// <summary>A printed rate lifts neither the ceiling on phosphate that is not needed nor that on nitrogen for
    /// legumes.</summary>
    private ApplicationRate? PrintedCeiling(PrintedRate rate)
    {
        if (rate.Nutrient == PlantNutrient.Nitrogen && nitrogen.IsLegumesOnly)
        {
            return ApplicationRate.FromPoundsPerAcre(
                Math.Max(rate.High.PoundsPerAcre, BlendNeedRule.LegumeNitrogenCeilingPounds)
            );
        }

        return rate.High > rate.Low || IsUnneededPhosphate(rate.Nutrient, rate.Low) ? rate.High : null;
    }

    private string Beside(NutrientTarget? own) =>
        own is null
            ? ""
            : $"; {(own.Nutrient is PlantNutrient.Phosphate or PlantNutrient.Potash ? request.System.Name : "the rule here")} "
                + $"would ask for {Amounts.Print(own.AtLeast.PoundsPerAcre, 1)} lb/ac";

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
                FindingCatalog.Create("nutrient-nitrogen-on-legume", ("rate", Amounts.Print(target.AtLeast.PoundsPerAcre, 1)))
            );
        }

        var doses = nitrogen.Doses(target.AtLeast, SpreadAtMost(target));
        double largest = doses.IsEmpty ? SpreadAtMost(target).PoundsPerAcre : doses.Max(d => d.High.PoundsPerAcre);
        if (largest > NitrogenMath.LargestSingleDosePounds)
        {
            findings.Add(FindingCatalog.Create("nutrient-nitrogen-single-dose", ("rate", Amounts.Print(largest, 1))));
        }

        findings.Add(FindingCatalog.Create("nutrient-urea-needs-rain"));
    }

    private ImmutableArray<(PlantNutrient Nutrient, WorkedLine Line)> Lines(ImmutableArray<NutrientTarget> used)
    {
        var lines = ImmutableArray.CreateBuilder<(PlantNutrient, WorkedLine)>();
        foreach (var nutrient in new[] { PlantNutrient.Phosphate, PlantNutrient.Potash })
        {
            lines.AddRange(ComponentLines(nutrient).Select(line => (nutrient, line)));
        }

        lines.AddRange(nitrogen.Lines().Select(line => (PlantNutrient.Nitrogen, line)));
        lines.AddRange(secondary.SelectMany(s => s.ShowWork().Select(line => (s.Rule.Nutrient, line))));
        lines.AddRange(
            used.Select(target =>
                (
                    target.Nutrient,
                    new WorkedLine(
                        $"Target {SoilWords.For(target.Nutrient)}",
                        target.Reason,
                        $"{Amounts.Print(target.AtLeast.PoundsPerAcre, 1)}{AtMost(target)} lb/ac"
                    )
                )
            )
        );
        return lines.ToImmutable();
    }

    /// <summary>The system's own sum once for each row it was read from, then what each kind asks.</summary>
    private IEnumerable<WorkedLine> ComponentLines(PlantNutrient nutrient)
    {
        var shown = new HashSet<CropRow>();
        foreach (var component in components)
        {
            if (component.For(nutrient) is not { } need || component.RowFor(nutrient) is not { } row)
            {
                continue;
            }

            foreach (var line in shown.Add(row) ? need.Work() : [])
            {
                yield return line;
            }

            string counts = component.Counts ? "counts" : "too small a share to count";
            yield return new WorkedLine(
                $"{SoilWords.For(nutrient)} for {component.Component.Kind.ShortName}",
                $"{request.System.Name}, row for {CropRows.WordsFor(row)}, "
                    + $"{Amounts.Print(component.Component.ShareOfFullStand, 4)} of a full stand ({counts})",
                $"{Amounts.Print(need.Rate.PoundsPerAcre, 1)} lb/ac",
                need.SourceIds.FirstOrDefault()
            );
        }
    }

    private static string AtMost(NutrientTarget target) =>
        target.AtMost is { } most ? $", at most {Amounts.Print(most.PoundsPerAcre, 1)}" : "";
}
