using System.Collections.Immutable;
using PlotAgronomy.Land;

namespace PlotAgronomy;

/// <content>Plots put together from pieces.</content>
public sealed partial class PlotArea
{
    /// <summary>A plot of several measured pieces, of which some may be taken off: a clump of trees, a pond.</summary>
    /// <param name="added">Pieces that are sown; at least one.</param>
    /// <param name="takenOff">Pieces inside them that are not.</param>
    /// <returns>The area; with an outline only where it is one whole piece, for how pieces lie to each other is not
    /// known.</returns>
    /// <exception cref="ArgumentException">No piece, one of which no length was measured, or nothing left.</exception>
    /// <remarks>area = sum of the pieces added - sum of those taken off. Lengths of one pace err together.</remarks>
    public static PlotArea FromPieces(IReadOnlyList<PlotArea> added, params IReadOnlyList<PlotArea> takenOff)
    {
        Guard.WithoutNulls(added);
        Guard.WithoutNulls(takenOff);
        return FromPieces([.. Guard.NotEmpty(added).Select(p => (true, p)), .. takenOff.Select(p => (false, p))]);
    }

    /// <summary>The same, in the order in which the pieces were named.</summary>
    internal static PlotArea FromPieces(ImmutableArray<(bool IsAdded, PlotArea Piece)> pieces)
    {
        if (pieces.Any(p => p.Piece.Changes.Count == 0))
        {
            throw new ArgumentException("A piece is given by its measured lengths.", nameof(pieces));
        }

        double[] added = [.. pieces.Where(p => p.IsAdded).Select(p => p.Piece.Area.SquareFeet)],
            takenOff = [.. pieces.Where(p => !p.IsAdded).Select(p => p.Piece.Area.SquareFeet)];
        double left = LandMath.PiecesSquareFeet(added.Sum(), takenOff.Sum());
        if (!(left > 0))
        {
            throw new ArgumentException("The pieces taken off leave nothing of those added.", nameof(pieces));
        }

        var whole = FromChanges(
            left,
            [.. pieces.SelectMany(p => p.Piece.Changes.Select(c => (c.Side, p.IsAdded ? c.Change : -c.Change)))],
            pieces is [(true, var only)] ? only.Outline : null,
            null,
            () => [.. pieces.SelectMany(p => p.Piece.ShapeLines()), AddedUp(added, takenOff)]
        );
        return new PlotArea
        {
            Area = whole.Area,
            Method = whole.Method,
            RelativeError = whole.RelativeError,
            Outline = whole.Outline,
            Pieces = pieces,
            Changes = whole.Changes,
            ShapeLines = whole.ShapeLines,
            Remarks = whole.Remarks,
            Lines = whole.Lines,
        };
    }
}
