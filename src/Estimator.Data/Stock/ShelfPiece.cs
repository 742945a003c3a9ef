using Estimator.Engine.Measures;

namespace Estimator.Data.Stock;

/// <summary>A partial coil or reel on the shelf.</summary>
/// <param name="Id">Its number in the company; 0 for a new one.</param>
/// <param name="Item">The cable.</param>
/// <param name="Label">What the firm calls it.</param>
/// <param name="Length">What is on it; zero takes it off the shelf.</param>
/// <param name="Version">Version that it was read at; 0 for a new one.</param>
public sealed record ShelfPiece(int Id, string Item, string Label, Length Length, int Version);
