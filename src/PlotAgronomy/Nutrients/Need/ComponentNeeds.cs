using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>Asks the system for every kind of the blend.</summary>
internal sealed class ComponentNeeds(PlotNeedRequest request)
{
    private static readonly PlantNutrient[] SystemNutrients = [PlantNutrient.Phosphate, PlantNutrient.Potash];

    private readonly List<Finding> findings = [];
    private readonly List<(CropRow Row, string Kind)> standIns = [];

    internal IReadOnlyList<Finding> Findings => findings;

    internal ImmutableArray<ComponentNeed> Run()
    {
        double counted = request.CountedFromShare ?? BlendNeedRule.CountedFromShare;
        bool none = request.Kinds.All(k => k.ShareOfFullStand < counted);
        if (none)
        {
            findings.Add(FindingCatalog.Create(NutrientCodes.NoShareCounts, ("share", Amounts.Print(counted, 4))));
        }

        ImmutableArray<ComponentNeed> needs = [.. request.Kinds.Select(k => Of(k, none || k.ShareOfFullStand >= counted))];
        findings.AddRange(
            standIns
                .Distinct()
                .GroupBy(s => s.Row)
                .Select(taken =>
                    FindingCatalog.Create(
                        NutrientCodes.TakenAs,
                        ("system", request.System.Name),
                        ("kind", string.Join("; ", taken.Select(t => t.Kind))),
                        ("row", CropRows.WordsFor(taken.Key))
                    )
                )
        );
        return needs;
    }

    internal static KindUse UseOf(PlotNeedRequest request, CropKind kind) =>
        request.Uses.GetValueOrDefault(kind.Id) ?? new KindUse();

    private ComponentNeed Of(KindShare component, bool counts)
    {
        var proxy = KindProxy.For(component.Kind);
        var use = UseOf(request, component.Kind);
        var needs = new Dictionary<PlantNutrient, (CropRow? Row, NutrientNeed? Need)>();
        foreach (var nutrient in SystemNutrients)
        {
            needs[nutrient] = Need(component.Kind, use, proxy, nutrient, counts);
        }

        return new ComponentNeed
        {
            Component = component,
            Counts = counts,
            PhosphateRow = needs[PlantNutrient.Phosphate].Row,
            PotashRow = needs[PlantNutrient.Potash].Row,
            Phosphate = needs[PlantNutrient.Phosphate].Need,
            Potash = needs[PlantNutrient.Potash].Need,
            Nitrogen = Nitrogen(component.Kind, use, proxy),
        };
    }

    private (CropRow?, NutrientNeed?) Need(CropKind kind, KindUse use, KindProxy proxy, PlantNutrient nutrient, bool counts)
    {
        if ((use.TakenAs ?? proxy.RowIn(request.System, nutrient)) is not { } row)
        {
            if (counts)
            {
                findings.Add(
                    FindingCatalog.Create(
                        NutrientCodes.KindWithoutRow,
                        ("system", request.System.Name),
                        ("kind", kind.ShortName),
                        ("nutrient", SoilWords.For(nutrient))
                    )
                );
            }

            return (null, null);
        }

        var answer = request.System.Recommend(request.Report, CropUseOf(row, use), request.Setting);
        if (counts)
        {
            findings.AddRange(answer.FindingsOn(nutrient));
            if (use.TakenAs is null && !proxy.IsOwn(row))
            {
                standIns.Add((row, kind.ShortName));
            }
        }

        return (row, answer.For(nutrient));
    }

    private static CropUse CropUseOf(CropRow row, KindUse use)
    {
        bool browsed = use.Removal is { } stated ? ReferenceEquals(stated, CropRemoval.Browsed) : !use.IsCarriedOff;
        if (browsed)
        {
            return CropUse.Browsed(row, use.Yield);
        }

        if (use.Yield is not { } yield)
        {
            throw new ArgumentException("A crop that is carried off needs a yield; it is asked for, never assumed.", nameof(use));
        }

        if (use.Removal is not { } removal)
        {
            return CropUse.CarriedOff(row, yield);
        }

        return removal.Find(PlantNutrient.Phosphate) is { } phosphate && removal.Find(PlantNutrient.Potash) is { } potash
            ? CropUse.CarriedOff(row, yield, phosphate.High, potash.High)
            : throw new ArgumentException("The stated removal must give both P2O5 and K2O.", nameof(use));
    }

    private NitrogenAnswer Nitrogen(CropKind kind, KindUse use, KindProxy proxy)
    {
        var rule = use.Nitrogen ?? proxy.Nitrogen;
        if (kind.IsLegume && use.Nitrogen is null && !request.LegumesAreInoculated)
        {
            rule = NitrogenRule.UninoculatedLegume;
        }

        bool fits = use.Yield is { } yield && rule.YieldUnit == yield.Unit;
        return rule.Answer(fits ? use.Yield : null);
    }
}
