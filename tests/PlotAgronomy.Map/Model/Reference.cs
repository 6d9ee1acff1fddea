namespace PlotAgronomy.Map.Model;

/// <summary>One member uses another; the line is that of the first use.</summary>
/// <remarks>The user is empty where code stands outside every type, as an assembly's attributes do.</remarks>
internal sealed record Reference(string User, string Used, string FromFile, string ToFile, int Line);
