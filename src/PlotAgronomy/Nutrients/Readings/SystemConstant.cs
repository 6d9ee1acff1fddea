namespace PlotAgronomy.Nutrients;

/// <summary>One coefficient with its source and standing.</summary>
internal sealed record SystemConstant(double Value, string SourceId, DataStatus Status)
{
    public static implicit operator double(SystemConstant constant) => constant.Value;
}
