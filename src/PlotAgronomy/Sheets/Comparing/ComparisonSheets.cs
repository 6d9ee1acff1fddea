using PlotAgronomy.Nutrients;
using PlotAgronomy.Planning;

namespace PlotAgronomy.Sheets;

/// <summary>What a plan leaves open, side by side: recommendation systems, lime methods, lots of seed, a store's blend against
/// plain lots.</summary>
public static class ComparisonSheets
{
    /// <summary>The plan's report through every recommendation system that accepts it.</summary>
    /// <param name="plan">Plan. The system it names is asked by name.</param>
    /// <param name="takenAs">Crop row to ask every system for; null asks each for the rows that the plan's kinds are taken
    /// as.</param>
    /// <param name="includeFromMemory">Whether to ask the systems whose numbers are from memory as well; each then says
    /// so.</param>
    /// <returns>The sheet.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Unknown row.</exception>
    public static FieldSheet Systems(PlotPlan plan, CropRow? takenAs = null, bool includeFromMemory = false)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return SystemsSheet.Write(plan, takenAs is { } row ? Guard.Defined(row, nameof(takenAs)) : null, includeFromMemory);
    }

    /// <summary>The plan's soil through every lime method that accepts its reading, in one material at one depth.</summary>
    /// <param name="plan">Plan. The method it names is asked by name.</param>
    /// <param name="targetPh">pH aimed at, from 4 to 9; null takes the plan's own.</param>
    /// <param name="includeFromMemory">Whether to ask the methods whose numbers are from memory as well; each then says
    /// so.</param>
    /// <param name="material">Common material, such as one of the plan's; null takes pure carbonate powder.</param>
    /// <returns>The sheet.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A pH outside its range.</exception>
    public static FieldSheet Lime(
        PlotPlan plan,
        double? targetPh = null,
        bool includeFromMemory = false,
        LimingMaterial? material = null
    )
    {
        ArgumentNullException.ThrowIfNull(plan);
        return LimeSheet.Write(plan.CompareLime(targetPh, includeFromMemory, material));
    }

    /// <summary>Lots of one kind by the cost of an acre of the same living stand, for every kind the plan offers in several
    /// lots.</summary>
    /// <param name="plan">Plan.</param>
    /// <returns>The sheet.</returns>
    /// <exception cref="InvalidOperationException">No kind is offered in several lots
    /// (<see cref="PlotPlan.KindsInSeveralLots"/>).</exception>
    public static FieldSheet SeedLots(PlotPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.KindsInSeveralLots.IsEmpty
            ? throw new InvalidOperationException("The plan offers no kind in more than one lot.")
            : SeedLotsSheet.Write(plan);
    }

    /// <summary>Each of the plan's store blends against plain lots.</summary>
    /// <param name="plan">Plan.</param>
    /// <returns>The sheet.</returns>
    /// <exception cref="InvalidOperationException">The plan offers none (<see cref="PlotPlan.StoreBlends"/>).</exception>
    public static FieldSheet StoreBlends(PlotPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.StoreBlends.IsEmpty
            ? throw new InvalidOperationException("The plan offers no store blend.")
            : StoreBlendsSheet.Write(plan);
    }
}
