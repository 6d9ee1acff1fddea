using System.Collections.Immutable;

namespace PlotAgronomy.Nutrients;

/// <summary>The row of a system that kinds of a blend were read from.</summary>
/// <param name="row">Row; null where the system has none for them.</param>
/// <param name="kinds">The kinds.</param>
internal sealed class RowRead(CropRow? row, ImmutableArray<CropKind> kinds)
{
    internal CropRow? Row => row;

    internal ImmutableArray<CropKind> Kinds => kinds;

    /// <summary>Whether it was printed for a food plot, whatever is sown on it.</summary>
    internal bool IsForFoodPlots => row is { } taken && CropRows.IsWildlifePlot(taken);

    /// <summary>Whether it was made for each of the kinds.</summary>
    internal bool IsTheirOwn => row is { } taken && kinds.All(k => KindProxy.For(k).IsOwn(taken));
}
