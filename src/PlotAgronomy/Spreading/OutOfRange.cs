namespace PlotAgronomy.Spreading;

/// <summary>What a curve does with an argument outside its knots. It never extrapolates.</summary>
internal enum OutOfRange
{
    /// <summary>Throw: the caller has already answered such arguments some other way.</summary>
    Refuse,

    /// <summary>The value is zero there, as beyond the last tray of a pattern.</summary>
    Zero,
}
