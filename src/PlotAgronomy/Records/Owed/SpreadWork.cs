using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Records;

/// <summary>What loads really put down: lines and remarks.</summary>
internal static class SpreadWork
{
    internal static IEnumerable<WorkedLine> Lines(string what, ImmutableArray<SpreadLoad> loads, double plotAcres)
    {
        foreach (var load in loads)
        {
            if (load.BagCount is { } bags)
            {
                yield return RecordFormulas
                    .All["record-load-weight"]
                    .Line(
                        Amounts.Print(load.Weight, "lb", 1),
                        ("what", what),
                        ("bags", Amounts.Print(bags, 2)),
                        ("bag", Amounts.Print(load.Weight.Pounds / bags, 2))
                    );
            }

            double acres = load.On is { } on ? on.Acres : plotAcres;
            yield return RecordFormulas
                .All["record-put-down"]
                .Line(
                    $"{Amounts.Print(RecordMath.PutDown(load.Weight.Pounds, acres), 1)} lb/ac",
                    ("what", what),
                    ("weight", Amounts.Print(load.Weight, "lb", 1)),
                    ("area", Amounts.Print(Area.FromAcres(acres), "ac", 3))
                );
        }
    }

    /// <summary>A remark where the loads with a measured area left part of the plot without.</summary>
    internal static Finding? NotCovered(string what, DateOnly on, ImmutableArray<SpreadLoad> loads, double plotAcres)
    {
        if (loads.Any(l => l.On is null))
        {
            return null;
        }

        double covered = loads.Sum(l => l.On!.Value.Acres);
        return covered < plotAcres * (1 - (RecordConstants.All["area-tolerance"] / 100))
            ? FindingCatalog.Create(
                RecordCodes.NotCovered,
                ("what", what),
                ("date", FieldWriter.Of(on)),
                ("covered", Amounts.Print(covered, 2)),
                ("area", Amounts.Print(plotAcres, 2)),
                ("rate", Amounts.Print(loads.Max(l => RecordMath.PutDown(l.Weight.Pounds, l.On!.Value.Acres)), 0))
            )
            : null;
    }
}
