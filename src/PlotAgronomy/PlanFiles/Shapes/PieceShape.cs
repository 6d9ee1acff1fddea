namespace PlotAgronomy.PlanFiles;

/// <summary>One piece of a plot, added or taken off.</summary>
internal sealed class PieceShape : PlanShape<(bool IsAdded, PlotArea Piece)>
{
    internal PieceShape(SidesShape sides)
        : base("piece", "One piece of a plot: added to it, or taken off.")
    {
        const string Added = "Sides of a piece that is sown.";
        var add = Optional("add", sides, Added, p => p.IsAdded ? p.Piece : null, PlanNeed.OneOf);
        const string Off = "Sides of a piece inside that is not sown, such as trees or a pond.";
        var takeOff = Optional("takeOff", sides, Off, p => p.IsAdded ? null : p.Piece, PlanNeed.OneOf);
        ReadAs(at => at.Has(add) ? (true, at.Get(add)) : (false, at.Get(takeOff)));
    }
}
