namespace PlotAgronomy.Map.Model;

/// <summary>One member uses another. The user is empty where code stands outside every type, as an assembly's attributes do.</summary>
internal sealed record Reference(string User, string Used, string FromFile, string ToFile);
