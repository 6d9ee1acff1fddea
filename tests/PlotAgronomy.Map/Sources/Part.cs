namespace PlotAgronomy.Map.Sources;

/// <summary>The part of the repository that a file belongs to.</summary>
internal enum Part
{
    Library,
    Sample,
    Test,
}
